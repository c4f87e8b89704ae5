using System.Globalization;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Quantities;

/// <summary>Conversions checked against arithmetic: C = (F - 32) × 5/9; kg = lb × 0.45359237 (the international pound).</summary>
public class ConversionTests
{
    [Theory]
    [InlineData("95", "35.00")]
    [InlineData("96.8", "36.00")]
    [InlineData("97", "36.11")]
    [InlineData("98.6", "37.00")]
    [InlineData("99", "37.22")]
    [InlineData("99.5", "37.50")]
    [InlineData("100", "37.78")]
    [InlineData("100.4", "38.00")]
    [InlineData("101", "38.33")]
    [InlineData("102", "38.89")]
    [InlineData("103", "39.44")]
    [InlineData("104", "40.00")]
    public void Fahrenheit_converts_exactly_to_Celsius(string fahrenheit, string celsius) =>
        decimal.Round(BodyTemperature.FromFahrenheit(Number(fahrenheit)).Celsius, 2, MidpointRounding.AwayFromZero).ShouldBe(Number(celsius));

    [Theory]
    [InlineData("37.8", "100.04")]
    [InlineData("37.2", "98.96")]
    [InlineData("37.5", "99.5")]
    public void Celsius_converts_exactly_to_Fahrenheit(string celsius, string fahrenheit) =>
        BodyTemperature.FromCelsius(Number(celsius)).Fahrenheit.ShouldBe(Number(fahrenheit));

    [Fact]
    public void Seventy_kilograms_are_154_point_324_pounds() =>
        decimal.Round(BodyWeight.FromKilograms(70).Pounds, 3).ShouldBe(154.324m);

    [Theory]
    [InlineData("26", TemperatureUnit.Celsius)]
    [InlineData("45", TemperatureUnit.Celsius)]
    [InlineData("85", TemperatureUnit.Fahrenheit)]
    [InlineData("113", TemperatureUnit.Fahrenheit)]
    public void A_bare_temperature_has_the_unit_of_its_range(string degrees, TemperatureUnit unit) =>
        BodyTemperature.Inferred(Number(degrees))!.Unit.ShouldBe(unit);

    [Theory]
    [InlineData("25.9")]
    [InlineData("45.1")]
    [InlineData("60")]
    [InlineData("84.9")]
    [InlineData("113.1")]
    public void A_bare_temperature_outside_both_ranges_has_no_unit(string degrees) =>
        BodyTemperature.Inferred(Number(degrees)).ShouldBeNull();

    /// <summary>Worked example B-21: pulse pressure 40, mean 93.3.</summary>
    [Fact]
    public void A_pressure_of_120_over_80_has_a_pulse_pressure_of_40_and_a_mean_of_93_point_3()
    {
        var pressure = BloodPressure.FromMillimetresOfMercury(120, 80);

        pressure.PulsePressure.ShouldBe(40);
        decimal.Round(pressure.MeanArterial, 1).ShouldBe(93.3m);
    }

    /// <summary>Worked examples M-12 and M-13. That a difference of 5 asks for a third reading (M-11) was dropped.</summary>
    [Fact]
    public void The_mean_of_several_pressures_is_rounded_half_away_from_zero_on_each_side()
    {
        BloodPressure.MeanOf([Pressure(142, 84), Pressure(136, 80), Pressure(138, 82)]).ShouldBe(Pressure(139, 82));
        BloodPressure.MeanOf([Pressure(132, 78), Pressure(128, 76)]).ShouldBe(Pressure(130, 77));
        BloodPressure.MeanOf([Pressure(121, 81), Pressure(120, 80)]).ShouldBe(Pressure(121, 81));
    }

    [Fact]
    public void A_mean_of_no_pressures_is_a_mistake_of_the_caller() =>
        Should.Throw<ArgumentException>(() => BloodPressure.MeanOf([]));

    private static BloodPressure Pressure(int systolic, int diastolic) => BloodPressure.FromMillimetresOfMercury(systolic, diastolic);

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
