using System.Text.Json.Serialization;

namespace HandsFree.Core.Observations;

/// <summary>The fourth stage: a reading that was read back and then confirmed in words. There is no other way to make one, and
/// the journal takes nothing else.</summary>
public sealed record Confirmed
{
    [JsonConstructor]
    internal Confirmed(ReadBack readBack, ConfirmedHow how, Heard confirmation, Attribution by) =>
        (ReadBack, How, Confirmation, By) = (readBack, how, confirmation, by);

    /// <summary>What was read back, with what was heard.</summary>
    public ReadBack ReadBack { get; }

    /// <summary>The strength of the confirmation.</summary>
    public ConfirmedHow How { get; }

    /// <summary>The hearing of the yes, or of the second saying.</summary>
    public Heard Confirmation { get; }

    /// <summary>Who, when measured, when entered.</summary>
    public Attribution By { get; }

    /// <summary>The reading.</summary>
    [JsonIgnore]
    public Reading Reading => ReadBack.Reading;
}
