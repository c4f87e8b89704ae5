using System.Text.Json;
using System.Text.Json.Serialization;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>A quantity as {"sign", "value", "second", "unit"}: what was said, never converted.</summary>
internal sealed class QuantityConverter : JsonConverter<Quantity>
{
    public override bool CanConvert(Type typeToConvert) => typeof(Quantity).IsAssignableFrom(typeToConvert);

    public override Quantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Plain plain = JsonSerializer.Deserialize<Plain>(ref reader, options) ?? throw new JsonException("a quantity is null");
        return QuantityFrom.Number(plain.Sign, new SpokenNumber(plain.Value, plain.Second), plain.Unit)
            ?? throw new JsonException($"no {plain.Sign} can be {plain.Value}");
    }

    public override void Write(Utf8JsonWriter writer, Quantity value, JsonSerializerOptions options)
    {
        Plain plain = value switch
        {
            HeartRate v => new(v.Sign, v.PerMinute, null, null),
            RespiratoryRate v => new(v.Sign, v.PerMinute, null, null),
            OxygenSaturation v => new(v.Sign, v.Percent, null, null),
            PainScore v => new(v.Sign, v.OfTen, null, null),
            BloodPressure v => new(v.Sign, v.Systolic, v.Diastolic, null),
            BodyTemperature v => new(v.Sign, v.Degrees, null, v.Unit == TemperatureUnit.Fahrenheit ? "F" : "C"),
            BodyWeight v => new(v.Sign, v.Value, null, v.Unit == WeightUnit.Pounds ? "lb" : "kg"),
            _ => throw new JsonException($"a {value.GetType().Name} has no form in the journal"),
        };
        JsonSerializer.Serialize(writer, plain, options);
    }

    private sealed record Plain(VitalSign Sign, decimal Value, decimal? Second, string? Unit);
}
