using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.Core.Rules;

namespace HandsFree.App.Homes;

/// <summary>The home's leave to count breaths for 30 seconds and double them (safety 2); 15 seconds never.</summary>
/// <param name="ApprovedBy">Who approved it.</param>
/// <param name="ApprovedOn">When.</param>
internal sealed record ShortCountOfBreaths(string ApprovedBy, DateOnly ApprovedOn)
{
    private const string Rule = "respirations.method.30-seconds";

    /// <summary>The home's rules with the rule switched off that asks for 60 seconds, so that rules and dialogue can't differ. What the
    /// home's own file says of that rule stays.</summary>
    /// <param name="own">The home's own file, known to be right, or null.</param>
    /// <param name="path">Where it would lie.</param>
    public RuleFile Allow(RuleFile? own, string path)
    {
        JsonObject file = own is null ? [] : JsonNode.Parse(own.Text, null, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip })!.AsObject();
        JsonArray overrides = file["override"]?.AsArray() ?? [];
        file["override"] ??= overrides;
        if (!overrides.Any(o => (string?)o!["id"] == Rule))
        {
            overrides.Add(new JsonObject
            {
                ["id"] = Rule,
                ["off"] = true,
                ["approved by"] = ApprovedBy,
                ["approved on"] = ApprovedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            });
        }

        return new RuleFile(own?.Name ?? path, file.ToJsonString());
    }
}
