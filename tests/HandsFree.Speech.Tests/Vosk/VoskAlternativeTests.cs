using HandsFree.Speech.Vosk;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Vosk;

public sealed class VoskAlternativeTests
{
    [Fact]
    public void Text_and_score_are_read() =>
        VoskAlternative.ParseAll("""{"alternatives": [{"confidence": 53.5, "text": " one two "}, {"confidence": 51, "text": ""}]}""")
            .ShouldBe([new("one two", 53.5), new("", 51)]);

    [Fact]
    public void A_result_without_alternatives_is_none() => VoskAlternative.ParseAll("""{"text": ""}""").ShouldBeEmpty();
}
