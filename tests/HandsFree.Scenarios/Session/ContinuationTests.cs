using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Quantities;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>Which time-out ends an answer.</summary>
public sealed class ContinuationTests
{
    private static readonly ListeningGrammars Grammars = new(new GrammarShelf(Path.Combine(Shared.Repository, "grammars")));

    [Theory]
    [InlineData("yes", false)]
    [InlineData("no", true)]
    public void Yes_is_complete_and_no_may_become_a_correction(string words, bool mayGoOn) =>
        Continuations.MayGoOn(Grammars.For(new Listening(ListeningKind.Confirmation, VitalSign.Pulse))!, words).ShouldBe(mayGoOn);

    [Fact]
    public void Every_listening_of_a_round_has_its_grammar() => Grammars.All().Count().ShouldBe(8 + (7 * 3));
}
