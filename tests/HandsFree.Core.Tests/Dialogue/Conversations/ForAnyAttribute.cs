using System.Globalization;
using FsCheck.Xunit;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>A property of any conversation. The same conversations in every run; with HANDSFREE_CONVERSATIONS=20000 that many others, each
/// time, for a longer run by hand.</summary>
#pragma warning disable xUnit3003 // FsCheck's attribute takes no source information.
public sealed class ForAnyAttribute : PropertyAttribute
#pragma warning restore xUnit3003
{
    private const string Same = "9120983470921834709,1234567890123456789";

    public ForAnyAttribute(int count)
    {
        Arbitrary = [typeof(AnyConversations)];
        if (int.TryParse(Environment.GetEnvironmentVariable("HANDSFREE_CONVERSATIONS"), CultureInfo.InvariantCulture, out int more))
        {
            MaxTest = more;
        }
        else
        {
            MaxTest = count;
            Replay = Same;
        }
    }
}
