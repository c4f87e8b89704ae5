using HandsFree.App.Commands;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Core.Meanings;
using HandsFree.Speech;

namespace HandsFree.App.ShiftChange;

/// <summary>The questions of one run of "handsfree handover": from the command line, from the keyboard, or from a recording.</summary>
internal sealed class HandoverConversation(HandoverDesk desk, HandoverQuestions questions, CommandHost host, bool asJson)
{
    private const string Prompt = "? ";
    private readonly TextWriter output = host.Surroundings.Out;

    /// <summary>Says something that the reader must know; with JSON on stderr.</summary>
    public void Remark(string? text)
    {
        if (text is not null)
        {
            (asJson ? host.Surroundings.Error : output).WriteLine(text);
        }
    }

    /// <summary>Answers questions one after the other, up to the first that is none.</summary>
    public int AnswerAll(IEnumerable<string> asked)
    {
        foreach (string question in asked)
        {
            if (Answer(question, questions.Understand(question)) is not { } goesOn)
            {
                return host.Refuse($"\"{question}\" is no question of the handover; ask one of: {questions.Options}");
            }

            if (!goesOn)
            {
                break;
            }
        }

        return ExitCodes.Done;
    }

    /// <summary>Answers each line that is typed or piped in, until "goodbye" or the end.</summary>
    /// <returns>From a pipe, bad input where a line was no question; a person was told at once.</returns>
    public int AnswerLines()
    {
        int code = ExitCodes.Done;
        bool goesOn = true;
        while (goesOn && NextLine() is { } line)
        {
            if (string.IsNullOrWhiteSpace(line))
            {
                continue;
            }

            if (Answer(line, questions.Understand(line)) is { } answered)
            {
                goesOn = answered;
            }
            else
            {
                int refused = host.Refuse($"\"{line.Trim()}\" is no question of the handover; ask one of: {questions.Options}");
                code = host.Surroundings.IsInteractive ? code : refused;
            }
        }

        return code;
    }

    /// <summary>Hears a question and answers it.</summary>
    public int AnswerRecording(string file, Func<EngineChoice> start, IServiceProvider services)
    {
        EngineChoice choice = start();
        if (!choice.TryGet(out IRecognizer? recognizer))
        {
            return host.Refuse(choice.Line);
        }

        using (recognizer)
        {
            Remark(choice.Line);
            FileHearer hearer = new(recognizer, questions.Grammar, services);
            (HeardFile? heard, string? error) = hearer.WhyNot() is { } whyNot ? (null, whyNot) : hearer.Hear(file);
            if (heard is null)
            {
                return host.Refuse(error!);
            }

            return heard.Understood is { } understood && Answer(understood.Words, MeaningMap.From(understood.Meaning)) is not null
                ? ExitCodes.Done
                : host.Refuse($"{file}: {heard.Outcome}, no question of the handover; say one of: {questions.Options}");
        }
    }

    private string? NextLine()
    {
        if (host.Surroundings.IsInteractive)
        {
            output.Write(Prompt);
        }

        return host.Surroundings.In.ReadLine();
    }

    /// <summary>Answers, and says whether there may be more; null where it is no question.</summary>
    private bool? Answer(string question, Meaning? meaning)
    {
        switch (meaning)
        {
            case Meaning.Query query:
                AnsweredQuestion answered = desk.Answer(question, query);
                output.WriteLine(asJson ? AnswerWriter.Json(answered) : AnswerWriter.Text(answered));
                output.Flush();
                return !answered.IsGoodbye;
            case Meaning.Command { Word: CommandWord.Help or CommandWord.Options }:
                Remark($"One can ask: {questions.Options}.");
                return true;
            case Meaning.Command { Word: CommandWord.Stop }:
                return false;
            default:
                return null;
        }
    }
}
