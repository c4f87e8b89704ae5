using HandsFree.App.Hear;
using HandsFree.App.ShiftChange;
using HandsFree.Core.Meanings;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

public sealed class HandoverQuestionTests
{
    private static readonly HandoverQuestions Questions = new(new GrammarShelf(Path.Combine(AppContext.BaseDirectory, "grammars")));

    [Fact]
    public void Every_room_from_1_to_599_can_be_typed_in_figures()
    {
        for (int room = 1; room <= 599; room++)
        {
            Questions.Understand($"room {room}").ShouldBe(new Meaning.Query(QueryKind.Room, room));
        }
    }

    [Fact]
    public void Everything_that_is_offered_is_understood()
    {
        string[] offered = Questions.Options.Split(", ");

        offered.Length.ShouldBeGreaterThan(5);
        offered.ShouldAllBe(question => Questions.Understand(question) != null);
    }

    [Theory]
    [InlineData("")]
    [InlineData("room")]
    [InlineData("room 1200")]
    [InlineData("yes")]
    [InlineData("pulse seventy two")]
    public void What_is_no_question_means_nothing(string text) => Questions.Understand(text).ShouldBeNull();
}
