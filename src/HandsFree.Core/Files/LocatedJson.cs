using System.Text.Json;

namespace HandsFree.Core.Files;

/// <summary>Reads JSON into values that know their lines, so that an error can name one. Comments are allowed. At most 64 levels deep.</summary>
public static class LocatedJson
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The top value, or null with the error where the content is no JSON.</summary>
    /// <param name="file">The name that the error carries.</param>
    /// <param name="content">UTF-8, with or without a byte order mark.</param>
    /// <param name="errors">Gets the error, and one for each text with a character that steers (<see cref="PlainText"/>).</param>
    /// <param name="anyText">Whether texts may hold any character: for a format of others, whose texts are checked where they are used.</param>
    public static LocatedNode? Read(string file, byte[] content, ICollection<FileError> errors, bool anyText = false)
    {
        byte[] bytes = content.AsSpan().StartsWith(ByteOrderMark) ? content[ByteOrderMark.Length..] : content;
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip });
        var lines = new Lines(bytes);
        try
        {
            reader.Read();
            var top = Value(ref reader, lines, anyText ? null : (line, wrong) => errors.Add(new(file, line, wrong)));
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
            errors.Add(new(file, lines.At(reader.TokenStartIndex), "a number that is too large or too fine; write it with fewer digits"));
        }
        catch (InvalidOperationException)
        {
            errors.Add(new(file, lines.At(reader.TokenStartIndex), "a text with half a character (\\u without its partner); write the character itself"));
        }

        return null;
    }

    private static LocatedNode Value(ref Utf8JsonReader reader, Lines lines, Action<int, string>? refuse)
    {
        int line = lines.At(reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var record = new LocatedNode(JsonValueKind.Object, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    int nameLine = lines.At(reader.TokenStartIndex);
                    string name = Text(ref reader, nameLine, refuse);
                    reader.Read();
                    record.Fields.Add(new(name, nameLine, Value(ref reader, lines, refuse)));
                }

                return record;
            case JsonTokenType.StartArray:
                var list = new LocatedNode(JsonValueKind.Array, line);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Value(ref reader, lines, refuse));
                }

                return list;
            case JsonTokenType.String:
                return new(JsonValueKind.String, line) { Text = Text(ref reader, line, refuse) };
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

    private static string Text(ref Utf8JsonReader reader, int line, Action<int, string>? refuse)
    {
        string text = reader.GetString()!;
        if (refuse is not null && PlainText.WhyNot(text) is { } why)
        {
            refuse(line, $"the text \"{PlainText.Shown(text)}\" {why}");
        }

        return text;
    }

    /// <summary>Counts the lines up to a byte; the bytes are asked for in rising order, so that a large file is counted once.</summary>
    private sealed class Lines(byte[] bytes)
    {
        private int counted;
        private int line = 1;

        public int At(long index)
        {
            int until = (int)index;
            line += bytes.AsSpan(counted, Math.Max(0, until - counted)).Count((byte)'\n');
            counted = Math.Max(counted, until);
            return line;
        }
    }
}
