using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Speech.Scripted;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Scripted;

public sealed class ScriptedRecognizerTests
{
    private static readonly Grammar Any = Grammar.Parse("#JSGF V1.0; grammar any; public <any> = one {1};", "any.jsgf");
    private static readonly Hearing One = new(HearingOutcome.Heard, [new(new SemanticNumber(1), "one", 0.9)], "one");

    [Fact]
    public void The_answers_come_in_their_order()
    {
        using var engine = new ScriptedRecognizer([Hearing.Nothing, One]);
        engine.Hear([], Any).ShouldBe(Hearing.Nothing);
        engine.Hear([], Any).ShouldBe(One);
        engine.Asked.ShouldBe([Any, Any]);
        engine.Left.ShouldBe(0);
    }

    [Fact]
    public void A_script_at_its_end_says_which_hearing_had_no_answer()
    {
        using var engine = new ScriptedRecognizer([One]);
        engine.Hear([], Any);
        Should.Throw<InvalidOperationException>(() => engine.Hear([], Any)).Message.ShouldBe("the script had no answer left for hearing number 2");
    }

    [Fact]
    public void After_disposal_every_call_says_so()
    {
        var engine = new ScriptedRecognizer([One]);
        engine.Dispose();
        Should.Throw<ObjectDisposedException>(() => engine.Prepare(Any));
        Should.Throw<ObjectDisposedException>(() => engine.Hear([], Any));
    }
}
