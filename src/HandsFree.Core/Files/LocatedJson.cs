using System.Text.Json;

namespace HandsFree.Core.Files;

/// <summary>Reads JSON into values that know their lines, so that an error can name one. Comments are allowed.</summary>
public static class LocatedJson
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The top value, or null with the error where the content is no JSON.</summary>
    /// <param name="file">The name that the error carries.</param>
    /// <param name="content">UTF-8, with or without a byte order mark.</param>
    /// <param name="errors">Gets the error.</param>
    public static LocatedNode? Read(string file, byte[] content, ICollection<FileError> errors)
    {
        byte[] bytes = content.AsSpan().StartsWith(ByteOrderMark) ? content[ByteOrderMark.Length..] : content;
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip });
        try
        {
            reader.Read();
            var top = Value(ref reader, bytes);
            while (reader.Read())
            {
                // Only white space and comments may follow; anything else throws.
            }

            return top;
        }
        catch (JsonException e)
        {
            int line = (int)(e.LineNumber ?? 0) + 1;
            string what = e.Message.Split(" LineNumber:")[0];
            errors.Add(new(file, line, $"not JSON: {what} Mend the text at this line."));
        }
        catch (FormatException)
        {
            errors.Add(new(file, LineAt(bytes, reader.TokenStartIndex), "a number that is too large or too fine; write it with fewer digits"));
        }
        catch (InvalidOperationException)
        {
            errors.Add(new(file, LineAt(bytes, reader.TokenStartIndex), "a text with half a character (\\u without its partner); write the character itself"));
        }

        return null;
    }

    private static LocatedNode Value(ref Utf8JsonReader reader, byte[] bytes)
    {
        int line = LineAt(bytes, reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var record = new LocatedNode(JsonValueKind.Object, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    string name = reader.GetString()!;
                    int nameLine = LineAt(bytes, reader.TokenStartIndex);
                    reader.Read();
                    record.Fields.Add(new(name, nameLine, Value(ref reader, bytes)));
                }

                return record;
            case JsonTokenType.StartArray:
                var list = new LocatedNode(JsonValueKind.Array, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Value(ref reader, bytes));
                }

                return list;
            case JsonTokenType.String:
                return new(JsonValueKind.String, line) { Text = reader.GetString()! };
            case JsonTokenType.Number:
                return new(JsonValueKind.Number, line) { Number = reader.GetDecimal() };
            case JsonTokenType.True:
                return new(JsonValueKind.True, line);
            case JsonTokenType.False:
                return new(JsonValueKind.False, line);
            default:
                return new(JsonValueKind.Null, line);
        }
    }

    private static int LineAt(byte[] bytes, long index) => bytes.AsSpan(0, (int)index).Count((byte)'\n') + 1;
}
