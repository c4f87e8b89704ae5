using System.Text.Json;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>Reads JSON into values that know their lines, so that an error can name one. Comments and a comma before a closing bracket
/// are allowed.</summary>
internal static class LocatedJson
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The top value, or null with the error where the bytes are no JSON.</summary>
    /// <param name="file">The file's name for the errors.</param>
    /// <param name="bytes">Its content, UTF-8.</param>
    /// <param name="errors">Gets the error.</param>
    public static LocatedValue? Read(string file, byte[] bytes, ICollection<FileError> errors)
    {
        byte[] text = bytes.AsSpan().StartsWith(ByteOrderMark) ? bytes[ByteOrderMark.Length..] : bytes;
        Utf8JsonReader reader = new(text, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        try
        {
            reader.Read();
            LocatedValue top = Value(ref reader, text);
            while (reader.Read())
            {
                // Only white space and comments may follow; anything else throws.
            }

            return top;
        }
        catch (JsonException e)
        {
            string what = e.Message.Split(" LineNumber:")[0];
            errors.Add(new(file, (int)(e.LineNumber ?? 0) + 1, $"not JSON: {what} Mend the text at this line"));
        }
        catch (FormatException)
        {
            errors.Add(new(file, LineAt(text, reader.TokenStartIndex), "a number that is too large or too fine; write a shorter one"));
        }
        catch (InvalidOperationException)
        {
            errors.Add(new(file, LineAt(text, reader.TokenStartIndex), "a text that is no UTF-8, or half a character (\\u without its partner); write the character itself"));
        }

        return null;
    }

    private static LocatedValue Value(ref Utf8JsonReader reader, byte[] text)
    {
        int line = LineAt(text, reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                LocatedValue record = new(JsonValueKind.Object, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    string name = reader.GetString()!;
                    int nameLine = LineAt(text, reader.TokenStartIndex);
                    reader.Read();
                    record.Fields.Add(new(name, nameLine, Value(ref reader, text)));
                }

                return record;
            case JsonTokenType.StartArray:
                LocatedValue list = new(JsonValueKind.Array, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Value(ref reader, text));
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

    private static int LineAt(byte[] text, long index) => text.AsSpan(0, (int)index).Count((byte)'\n') + 1;
}
