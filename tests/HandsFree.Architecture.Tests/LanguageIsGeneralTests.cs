using System.Text.RegularExpressions;
using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

/// <summary>The language room is about any grammar: clinical words belong to the grammars and to the core.</summary>
public sealed class LanguageIsGeneralTests
{
    private static readonly string[] ClinicalWords =
    [
        "aide", "blood", "breath", "caregiver", "celsius", "diastolic", "fahrenheit", "fever", "handover",
        "heart", "nurse", "nursing", "oxygen", "pain", "patient", "pulse", "recheck", "resident", "respiration",
        "respirations", "respiratory", "saturation", "spo2", "systolic", "temperature", "vital", "vitals",
    ];

    private static string[] Files =>
        [.. RepositoryFiles.Text.Where(path => path.StartsWith("src/HandsFree.Language/", StringComparison.Ordinal))];

    [Fact]
    public void The_language_room_holds_no_clinical_word() =>
        Files.SelectMany(path => Clinical(RepositoryFiles.Read(path)).Select(word => $"{path}: {word}")).ShouldBeEmpty();

    [Fact]
    public void A_clinical_word_is_found_where_there_is_one()
    {
        Files.ShouldNotBeEmpty();
        Clinical("a rule named heartRate, the PatientName and blood_pressure").ShouldBe(["heart", "Patient", "blood"], ignoreOrder: true);
        Clinical("an explained campaign, beside the painting").ShouldBeEmpty();
    }

    /// <summary>The clinical words in a text; parts of names such as BloodPressure count as words.</summary>
    private static IEnumerable<string> Clinical(string text) =>
        Regex.Matches(text, "[A-Z]?[a-z0-9]+|[A-Z]+(?![a-z])").Select(match => match.Value)
            .Where(word => ClinicalWords.Contains(word, StringComparer.OrdinalIgnoreCase)).Distinct();
}
