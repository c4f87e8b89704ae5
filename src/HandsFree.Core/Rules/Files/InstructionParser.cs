using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads the recheck instructions of a file.</summary>
internal static class InstructionParser
{
    private const int MinutesOfADay = 24 * 60;

    public static void ParseInto(Dictionary<string, RecheckInstruction> instructions, ObjectReader file)
    {
        foreach (var item in file.Objects("instructions"))
        {
            string id = item.RequiredText("id");
            string say = item.RequiredText("say");
            string source = item.RequiredText("source");
            int after = item.Whole("after minutes", 0, MinutesOfADay) ?? 0;
            var mark = item.Choice("mark", RuleVocabulary.Marks);
            item.NothingElse();
            if (mark is null && !item.Has("mark"))
            {
                item.Fault("\"mark\" is missing; one of: published, from memory, common practice, no source");
            }

            if (!instructions.TryAdd(id, new(id, say, TimeSpan.FromMinutes(after), source, mark ?? default)))
            {
                item.Fault($"the id \"{id}\" is there twice; give one of them another");
            }
        }
    }
}
