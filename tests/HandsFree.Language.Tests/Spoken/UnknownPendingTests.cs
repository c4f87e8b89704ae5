using HandsFree.Language.Meaning;
using Xunit;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>Values and corrections where the listener does not know which vital sign is meant.</summary>
public sealed class UnknownPendingTests
{
    [Fact]
    public void Whole_numbers_from_1_to_299_in_every_form()
    {
        for (int value = 1; value <= 299; value++)
        {
            Each(Means.Number(value), SpokenNumber.Forms(value));
        }
    }

    [Fact]
    public void Temperatures_with_point_and_without()
    {
        for (decimal degrees = 90.0m; degrees <= 108.0m; degrees += 0.1m)
        {
            Each(Means.Number(degrees), SpokenNumber.PointForms(degrees).Concat(degrees < 100 ? SpokenNumber.ShortForms(degrees) : []));
        }
    }

    [Fact]
    public void Pairs_of_pressures_drawn_with_a_seed()
    {
        var random = new Random(20263);
        for (int i = 0; i < 100; i++)
        {
            int systolic = random.Next(70, 260);
            int diastolic = random.Next(30, 150);
            Each(Means.Pair(systolic, diastolic), SpokenNumber.Forms(systolic).Select(s => $"{s} over {SpokenNumber.Words(diastolic)}"));
        }
    }

    private static void Each(SemanticValue value, IEnumerable<string> forms)
    {
        foreach (string form in forms)
        {
            Kinds.Only("value", null, form, Means.Record(("value", value)));
            Kinds.Only("confirmation", null, "no " + form, Means.Record(("corrected", value)));
            Kinds.Only("confirmation", null, "no it's " + form, Means.Record(("corrected", value)));
        }
    }
}
