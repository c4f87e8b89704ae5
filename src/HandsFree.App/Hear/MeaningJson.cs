using HandsFree.Language.Meaning;
using HandsFree.Speech;

namespace HandsFree.App.Hear;

/// <summary>A meaning as the command line writes it: the grammar's own record, but a question about a room is its words.</summary>
public static class MeaningJson
{
    /// <summary>The JSON text of what was heard.</summary>
    public static string Of(Candidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        return candidate.Meaning is SemanticRecord record && record["query"] is SemanticText { Value: "room" }
            ? SemanticRecord.Empty.With("query", new SemanticText(candidate.Words)).ToString()
            : candidate.Meaning.ToString();
    }
}
