using System.Globalization;
using HandsFree.Language.Meaning;
using Xunit;

namespace HandsFree.Language.Tests.Spoken;

public sealed class IdentityFormsTests
{
    private static readonly string[] Months =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    [Fact]
    public void Every_room_from_1_to_599_with_and_without_a_bed()
    {
        for (int room = 1; room <= 599; room++)
        {
            foreach (string form in SpokenNumber.Forms(room))
            {
                Kinds.Only("identity", null, "room " + form, Means.Record(("room", Means.Number(room)), ("bed", SemanticNothing.Only)));
                Kinds.Only("handover", null, "how is room " + form, Means.Record(("query", new SemanticText("room")), ("room", Means.Number(room))));
                foreach (string bed in new[] { "a", "b", "c", "d" })
                {
                    Kinds.Only("identity", null, $"room {form} bed {bed}", Means.Record(("room", Means.Number(room)), ("bed", new SemanticText(bed))));
                }
            }
        }
    }

    [Fact]
    public void Every_day_of_a_leap_year_as_a_birthday_with_and_without_a_year()
    {
        for (var day = new DateOnly(1936, 1, 1); day.Year == 1936; day = day.AddDays(1))
        {
            string month = Months[day.Month - 1];
            string ordinal = SpokenNumber.Ordinal(day.Day);
            foreach (string form in new[] { $"{month} {ordinal}", $"{month} {SpokenNumber.Words(day.Day)}", $"{month} the {ordinal}", $"born on the {ordinal} of {month}" })
            {
                Born(form, day.ToString("MM-dd", CultureInfo.InvariantCulture));
                Born(form + " nineteen thirty six", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            }
        }
    }

    [Fact]
    public void Every_year_of_birth_from_1900_to_1999()
    {
        for (int year = 1900; year <= 1999; year++)
        {
            int rest = year % 100;
            string spoken = rest switch { 0 => "nineteen hundred", < 10 => "nineteen oh " + SpokenNumber.Words(rest), _ => "nineteen " + SpokenNumber.Words(rest) };
            Born("july fourth " + spoken, $"{year}-07-04");
        }
    }

    [Fact]
    public void Numbers_on_a_band_of_1_to_6_digits_drawn_with_a_seed()
    {
        var random = new Random(20264);
        for (int i = 0; i < 300; i++)
        {
            string digits = string.Concat(Enumerable.Range(0, random.Next(1, 7)).Select(_ => (char)('0' + random.Next(10))));
            string spoken = string.Join(' ', digits.Select(d => d == '0' && random.Next(2) == 0 ? "oh" : SpokenNumber.Words(d - '0')));
            Kinds.Only("identity", null, "band " + spoken, Means.Record(("band", new SemanticText(digits))));
        }
    }

    [Fact]
    public void Every_count_from_1_to_199_in_every_form()
    {
        for (int count = 1; count <= 199; count++)
        {
            foreach (string form in SpokenNumber.Forms(count))
            {
                Kinds.Only("count", null, form, Means.Record(("count", Means.Number(count))));
                Kinds.Only("readings", null, $"pulse {form} in thirty seconds", Means.Record(
                    ("kind", new SemanticText("pulse")), ("counted", Means.Number(count)), ("seconds", Means.Number(30))));
            }
        }
    }

    private static void Born(string words, string date) =>
        Kinds.Only("identity", null, words, Means.Record(("born", new SemanticText(date))));
}
