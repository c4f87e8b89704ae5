using System.Globalization;
using System.Reflection;
using Xunit.v3;

namespace HandsFree.TestKit;

/// <summary>Every test of the assembly has a time limit: 10 minutes, or those of HANDSFREE_TEST_MINUTES. One that hangs ends the run, by
/// name; nothing gentler ends a test that waits for what never comes.</summary>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class TimeLimitAttribute : BeforeAfterTestAttribute
{
    private const double Minutes = 10;

    private static readonly TestWatch Watch = new(
        TimeSpan.FromMinutes(double.TryParse(Environment.GetEnvironmentVariable("HANDSFREE_TEST_MINUTES"), CultureInfo.InvariantCulture, out double minutes) ? minutes : Minutes),
        TimeProvider.System,
        late => Environment.FailFast($"a test hangs, {late}"));

    /// <inheritdoc/>
    public override void Before(MethodInfo methodUnderTest, IXunitTest test) => Watch.Began(test.UniqueID, test.TestDisplayName);

    /// <inheritdoc/>
    public override void After(MethodInfo methodUnderTest, IXunitTest test) => Watch.Ended(test.UniqueID);
}
