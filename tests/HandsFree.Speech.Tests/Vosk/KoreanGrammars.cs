using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Tests.Vosk;

/// <summary>Grammars in words that the small Korean model knows.</summary>
internal static class KoreanGrammars
{
    internal static Grammar Answers { get; } = Grammar.Parse(
        "#JSGF V1.0 UTF-8 ko; grammar answers; public <answer> = 감사합니다 {'thanks'} | 안녕하세요 {'hello'} | 오늘 날씨 {'weather'};", "answers.jsgf");

    internal static Grammar Colours { get; } = Grammar.Parse(
        "#JSGF V1.0 UTF-8 ko; grammar colours; public <colour> = 하늘 {'sky'} | 바다 {'sea'};", "colours.jsgf");
}
