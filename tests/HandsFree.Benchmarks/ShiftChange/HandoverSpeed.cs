using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Statistics;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.ShiftChange;

/// <summary>Times the way from the end of a question (the endpoint) to the text of its answer: hearing, projection of the record as a round
/// holds it, answer. The endpointer's own quiet and the voice come besides.</summary>
/// <param name="homeFolder">The home.</param>
/// <param name="recordings">The folder of the questions.</param>
internal sealed class HandoverSpeed(string homeFolder, string recordings)
{
    private const double Aim = 300;

    /// <summary>The engine's name.</summary>
    public required string Engine { get; init; }

    /// <summary>How often everything is asked.</summary>
    public required int Rounds { get; init; }

    /// <summary>Processor threads for one hearing.</summary>
    public required int Threads { get; init; }

    /// <summary>Asks everything and writes a table.</summary>
    /// <exception cref="InvalidDataException">No such home, engine or recordings.</exception>
    public int Run(TextWriter output)
    {
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), homeFolder);
        if (!services.GetRequiredService<HomeOpening>().TryGet(out Home? home))
        {
            throw new InvalidDataException($"{homeFolder}: {services.GetRequiredService<HomeOpening>().Errors[0]}");
        }

        long begun = Stopwatch.GetTimestamp();
        ImmutableList<JournalEvent> present = Present(home, services.GetRequiredService<Unlocker>());
        Say(output, "open the record and its view", Milliseconds(begun), "ms");
        Say(output, "events in the view", present.Count, "");
        Say(output, "residents", home.Roster.Residents.Count, "");
        if (!services.GetRequiredService<Engines>().Start(Engine, "--engine", Threads).TryGet(out IRecognizer? recognizer))
        {
            throw new InvalidDataException($"the engine {Engine} can't hear here");
        }

        using (recognizer)
        {
            Ask(output, recognizer, services, new HandoverRecord(present, home.Roster, home.Settings.Round, home.Settings.Clock, Time(home, present[^1].At)));
        }

        return 0;
    }

    private void Ask(TextWriter output, IRecognizer recognizer, ServiceProvider services, HandoverRecord record)
    {
        Grammar grammar = services.GetRequiredService<GrammarShelf>().Of("handover");
        recognizer.Prepare(grammar);
        (Transcript Said, SpeechSegment Speech)[] questions = [.. Questions(services.GetRequiredService<FileHearing>())];
        List<double> hearing = [], answering = [], both = [];
        int unheard = 0;
        for (int round = 0; round <= Rounds; round++)
        {
            foreach (var (_, speech) in questions)
            {
                long begun = Stopwatch.GetTimestamp();
                Speech.Hearing heard = recognizer.Hear(speech.Samples, grammar);
                double decoded = Milliseconds(begun);
                if (heard is not { Outcome: HearingOutcome.Heard, Best: { } best } || MeaningMap.From(best.Meaning) is not Meaning.Query query)
                {
                    unheard += round == 0 ? 0 : 1;
                    continue;
                }

                long understood = Stopwatch.GetTimestamp();
                HandoverAnswerer.Answer(record, query, HandoverCursor.Start);
                double answered = Milliseconds(understood);
                if (round > 0)
                {
                    hearing.Add(decoded);
                    answering.Add(answered);
                    both.Add(decoded + answered);
                }
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{questions.Length} questions, {Rounds} rounds after one to warm up, engine {Engine}; not heard {unheard}"));
        Row(output, "hearing", hearing);
        Row(output, "record to answer", answering);
        Row(output, "endpoint to answer", both);
        Say(output, $"within {Aim:0} ms", 100.0 * both.Count(ms => ms <= Aim) / Math.Max(1, both.Count), "%");
        Say(output, "peak memory", Process.GetCurrentProcess().PeakWorkingSet64 / (1024.0 * 1024), "MiB");
    }

    private IEnumerable<(Transcript, SpeechSegment)> Questions(FileHearing files)
    {
        Transcript[] asked = [.. TranscriptTable.Read(recordings).Where(said => said.State == "handover")];
        foreach (Transcript said in asked)
        {
            WavResult read = WavReader.Read(said.FilePath);
            yield return (said, read.IsRead && files.Speech(read.Clip) is { } speech ? speech : throw new InvalidDataException(read.Error ?? $"{said.FilePath}: no speech in it"));
        }

        if (asked.Length == 0)
        {
            throw new InvalidDataException($"{recordings}: no recording has a question of the handover");
        }
    }

    private static ImmutableList<JournalEvent> Present(Home home, Unlocker unlocker)
    {
        (HomeJournal? opened, string? error) = HomeJournal.Open(home.Folder, unlocker);
        using HomeJournal journal = opened ?? throw new InvalidDataException(error);
        ImmutableList<JournalEvent> present = [.. journal.Present()];
        return present.IsEmpty ? throw new InvalidDataException($"{home.Folder.JournalFile} is empty") : present;
    }

    private static HandoverTime Time(Home home, DateTimeOffset last) =>
        new(home.Settings.ShiftBegan(last), home.Settings.Here(last)) { Overdue = home.Settings.Overdue };

    private static void Row(TextWriter output, string what, List<double> milliseconds) => output.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{what,-32} median {Quantile.Of(milliseconds, 0.5),8:0.0}   95 % {Quantile.Of(milliseconds, 0.95),8:0.0}   most {milliseconds.DefaultIfEmpty(double.NaN).Max(),8:0.0} ms"));

    private static void Say(TextWriter output, string what, double value, string unit) =>
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-32} {value,10:0.#} {unit}"));

    private static double Milliseconds(long since) => Stopwatch.GetElapsedTime(since).TotalMilliseconds;
}
