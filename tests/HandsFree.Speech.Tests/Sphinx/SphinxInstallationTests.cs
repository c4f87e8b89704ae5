using HandsFree.Speech.Sphinx;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Sphinx;

public sealed class SphinxInstallationTests
{
    [Fact]
    public void A_missing_model_is_one_line_with_the_package_to_install()
    {
        Assert.SkipWhen(SphinxRecognizer.WhyNot(new()) is not null, SphinxRecognizer.WhyNot(new()) ?? "");
        var options = new SphinxOptions { ModelFolder = Path.Combine(Path.GetTempPath(), "handsfree-no-model") };
        string why = SphinxRecognizer.WhyNot(options).ShouldNotBeNull();
        why.ShouldStartWith("PocketSphinx has no English model (");
        why.ShouldEndWith("install the package pocketsphinx-en-us");
        Should.Throw<InvalidOperationException>(() => new SphinxRecognizer(options)).Message.ShouldBe(why);
    }

    [Fact]
    public void A_damaged_model_is_refused_and_does_not_end_the_process()
    {
        Assert.SkipWhen(SphinxRecognizer.WhyNot(new()) is not null, SphinxRecognizer.WhyNot(new()) ?? "");
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-sphinx-");
        try
        {
            folder.CreateSubdirectory("en-us");
            foreach (string name in (string[])["mdef", "feat.params", "means", "variances", "transition_matrices"])
            {
                File.WriteAllText(Path.Combine(folder.FullName, "en-us", name), "no model\n");
            }

            File.WriteAllText(Path.Combine(folder.FullName, "cmudict-en-us.dict"), "one W AH N\n");
            SphinxRecognizer.WhyNot(new() { ModelFolder = folder.FullName })
                .ShouldBe($"PocketSphinx's model is damaged ({Path.Combine(folder.FullName, "en-us", "mdef")}); install the package pocketsphinx-en-us again");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
