using HandsFree.Benchmarks.Recordings;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Recordings;

public sealed class TranscriptTableTests
{
    [Fact]
    public void Columns_come_in_any_order_and_others_are_left_alone()
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav")
            .Table("mood\twords\tmeaning\tfile\tspeaker", "glad\tpulse seventy\t{\"kind\": \"pulse\", \"value\": 70}\ta.wav\tann");

        Transcript only = TranscriptTable.Read(folder.FullPath).ShouldHaveSingleItem();

        (only.File, only.Speaker, only.Words, only.Kind, only.State).ShouldBe(("a.wav", "ann", "pulse seventy", "pulse", "readings"));
        only.Meaning!.ToJsonString().ShouldBe("""{"kind":"pulse","value":70}""");
    }

    [Fact]
    public void Without_a_meaning_there_are_only_words()
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav").Table("file\tspeaker\twords", "a.wav\tann\tone two");

        Transcript only = TranscriptTable.Read(folder.FullPath).ShouldHaveSingleItem();

        only.HasMeaning.ShouldBeFalse();
        only.Kind.ShouldBe("words");
    }

    [Theory]
    [InlineData("""{"kind": "pulse", "value": 70}""", "pulse", "readings")]
    [InlineData("""{"kind": "none", "value": null}""", "no reading", "readings")]
    [InlineData("{}", "no reading", "readings")]
    [InlineData("""{"kind": "command", "value": "stop"}""", "command", "readings")]
    [InlineData("""{"kind": "command", "value": "save"}""", "yes", "confirmation")]
    [InlineData("""{"confirm": false}""", "no", "confirmation")]
    [InlineData("""{"corrected": 57}""", "corrected", "confirmation")]
    [InlineData("""{"room": 12, "bed": "b"}""", "identity", "identity")]
    [InlineData("""{"born": "1937-06-23"}""", "identity", "identity")]
    [InlineData("""{"count": 42}""", "count", "count")]
    [InlineData("""{"query": "handover"}""", "query", "handover")]
    [InlineData("""{"hedge": true}""", "hedge", "readings")]
    public void A_meaning_says_its_kind_and_the_state_that_waits_for_it(string meaning, string kind, string state)
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav").Table("file\tspeaker\twords\treading", $"a.wav\tann\tx\t{meaning}");

        Transcript only = TranscriptTable.Read(folder.FullPath).ShouldHaveSingleItem();

        (only.Kind, only.State).ShouldBe((kind, state));
    }

    [Theory]
    [InlineData("there is no column \"speaker\"", "file\twords", "a.wav\tyes")]
    [InlineData("line 3 has 2 columns instead of 3", "file\tspeaker\twords", "a.wav\tann\tyes", "a.wav\tyes")]
    [InlineData("line 2: \"pulse\" is no JSON object", "file\tspeaker\twords\tmeaning", "a.wav\tann\tyes\tpulse")]
    [InlineData("line 2: \"7\" is no JSON object", "file\tspeaker\twords\tmeaning", "a.wav\tann\tyes\t7")]
    [InlineData("line 2: a command without a value", "file\tspeaker\twords\tmeaning", "a.wav\tann\tyes\t{\"kind\": \"command\"}")]
    [InlineData("1 of its recordings are not there, the first is b.wav", "file\tspeaker\twords", "a.wav\tann\tyes", "b.wav\tann\tno")]
    [InlineData("a.wav is there twice", "file\tspeaker\twords", "a.wav\tann\tyes", "a.wav\tann\tno")]
    [InlineData("it names no recording", "file\tspeaker\twords")]
    [InlineData("there is no column \"file\"")]
    public void What_is_wrong_is_named(string error, params string[] lines)
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav").Table(lines);

        Should.Throw<InvalidDataException>(() => TranscriptTable.Read(folder.FullPath)).Message.ShouldContain(error);
    }

    [Fact]
    public void A_folder_without_a_table_is_told_what_it_needs()
    {
        using RecordingFolder folder = new();

        Should.Throw<InvalidDataException>(() => TranscriptTable.Read(folder.FullPath)).Message.ShouldContain("there is no transcripts.tsv; it needs");
        Should.Throw<InvalidDataException>(() => TranscriptTable.Read(Path.Combine(folder.FullPath, "x"))).Message.ShouldEndWith("there is no such folder");
    }

    [Theory]
    [InlineData("""{"value": 98.0, "kind": "t"}""", """{"kind": "t", "value": 98}""", true)]
    [InlineData("""{"value": "98"}""", """{"value": 98}""", false)]
    [InlineData("""{"value": 98}""", """{"value": 98, "low": 60}""", false)]
    [InlineData("""{"value": [120, 80]}""", """{"value": [120, 80.0]}""", true)]
    [InlineData("""{"value": [120, 80]}""", """{"value": [80, 120]}""", false)]
    [InlineData("""{"bed": null, "room": 12}""", """{"room": 12}""", false)]
    public void Meanings_are_compared_by_their_content(string a, string b, bool same) =>
        SameMeaning.Of(System.Text.Json.Nodes.JsonNode.Parse(a), System.Text.Json.Nodes.JsonNode.Parse(b)).ShouldBe(same);
}
