using Xunit;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>Every value in range, in every form, comes back as itself.</summary>
public sealed class VitalSignFormsTests
{
    [Fact]
    public void Every_pulse_from_10_to_299_in_every_form()
    {
        for (int pulse = 10; pulse <= 299; pulse++)
        {
            Kinds.EachMeans("pulse", "pulse", "pulse", Means.Number(pulse), SpokenNumber.Forms(pulse));
        }
    }

    [Fact]
    public void Every_respiratory_rate_from_1_to_99_in_every_form()
    {
        for (int rate = 1; rate <= 99; rate++)
        {
            Kinds.EachMeans("respirations", "respirations", "respirations", Means.Number(rate), SpokenNumber.Forms(rate));
        }
    }

    [Fact]
    public void Every_oxygen_saturation_from_10_to_100_with_and_without_percent()
    {
        for (int saturation = 10; saturation <= 99; saturation++)
        {
            Kinds.EachMeans("oxygen", "oxygen", "oxygen", Means.Number(saturation), SpokenNumber.Forms(saturation).SelectMany(f => new[] { f, f + " percent" }));
        }

        Kinds.EachMeans("oxygen", "saturation", "oxygen", Means.Number(100), ["one hundred", "a hundred", "one zero zero percent", "one oh oh"]);
    }

    [Theory]
    [InlineData(85.0, 113.0)]
    [InlineData(26.0, 45.0)]
    public void Every_temperature_in_tenths_in_every_form(double lowest, double highest)
    {
        for (decimal degrees = (decimal)lowest; degrees <= (decimal)highest; degrees += 0.1m)
        {
            IEnumerable<string> forms = SpokenNumber.PointForms(degrees);
            if (degrees == decimal.Truncate(degrees))
            {
                forms = forms.Concat(SpokenNumber.Forms((int)degrees));
            }

            if (degrees is >= 30 and < 100)
            {
                forms = forms.Concat(SpokenNumber.ShortForms(degrees));
            }

            Kinds.EachMeans("temperature", "temperature", "temperature", Means.Number(degrees), forms.SelectMany(f => new[] { f, f + " degrees" }));
        }
    }

    [Fact]
    public void Every_systolic_pressure_from_10_to_299_in_every_form()
    {
        for (int systolic = 10; systolic <= 299; systolic++)
        {
            Kinds.EachMeans("pressure", "blood pressure", "blood pressure", Means.Pair(systolic, 76), SpokenNumber.Forms(systolic).Select(f => f + " over seventy six"));
        }
    }

    [Fact]
    public void Every_diastolic_pressure_from_10_to_199_in_every_form()
    {
        for (int diastolic = 10; diastolic <= 199; diastolic++)
        {
            Kinds.EachMeans("pressure", "pressure", "blood pressure", Means.Pair(118, diastolic), SpokenNumber.Forms(diastolic).Select(f => "one eighteen over " + f));
        }
    }

    [Fact]
    public void Pairs_of_pressures_drawn_with_a_seed_in_every_form_of_both()
    {
        var random = new Random(20261);
        for (int i = 0; i < 150; i++)
        {
            int systolic = random.Next(10, 300);
            int diastolic = random.Next(10, 200);
            IEnumerable<string> forms = SpokenNumber.Forms(systolic).SelectMany(s => SpokenNumber.Forms(diastolic).Select(d => $"{s} over {d}"));
            Kinds.EachMeans("pressure", "blood pressure", "blood pressure", Means.Pair(systolic, diastolic), forms);
        }
    }

    [Fact]
    public void Every_weight_from_10_to_599_whole_and_with_a_half_in_every_form_and_tenths_drawn_with_a_seed()
    {
        var random = new Random(20262);
        for (int pounds = 10; pounds <= 599; pounds++)
        {
            decimal tenths = pounds + (random.Next(0, 10) / 10m);
            Kinds.EachMeans("weight", "weight", "weight", Means.Number(pounds), SpokenNumber.Forms(pounds));
            Kinds.EachMeans("weight", "weight", "weight", Means.Number(pounds + 0.5m), SpokenNumber.Forms(pounds).Select(f => f + " and a half"));
            Kinds.EachMeans("weight", "weight is", "weight", Means.Number(tenths), SpokenNumber.PointForms(tenths));
        }
    }

    [Fact]
    public void Every_pain_score_from_0_to_10()
    {
        for (int score = 0; score <= 10; score++)
        {
            Kinds.EachMeans("pain", "pain", "pain", Means.Number(score), [SpokenNumber.Words(score), SpokenNumber.Words(score) + " out of ten"]);
        }
    }
}
