using HandsFree.Language.Grammars;
using HandsFree.Speech.Vosk;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Vosk;

/// <summary>What is missing is named on one line, and nothing reaches the native library that would end the process.</summary>
public sealed class VoskInstallationTests
{
    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        string folder = Path.Combine(Path.GetTempPath(), "handsfree-no-such-model");
        VoskRecognizer.WhyNot(new(folder)).ShouldBe($"the Vosk model is not installed (no folder {folder}); models-readme says where to get it");
        Should.Throw<InvalidOperationException>(() => new VoskRecognizer(new(folder))).Message.ShouldContain(folder);
    }

    [Fact]
    public void A_folder_that_is_no_model_names_the_first_file_that_it_lacks()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-vosk-empty-");
        try
        {
            VoskRecognizer.WhyNot(new(folder.FullName)).ShouldNotBeNull().ShouldContain("am/final.mdl is missing or empty");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_library_file_that_is_not_there_is_named()
    {
        string file = Path.Combine(Path.GetTempPath(), "handsfree-no-such-libvosk.so");
        VoskRecognizer.WhyNot(new(KoreanModel.Folder()) { LibraryFile = file }).ShouldNotBeNull().ShouldContain(file);
    }

    [Fact]
    public void Words_that_the_model_lacks_are_named_all_of_them()
    {
        using var engine = new VoskRecognizer(KoreanModel.Options());
        Grammar english = Grammar.Parse("#JSGF V1.0; grammar english; public <x> = 감사합니다 | respirations | axillary;", "english.jsgf");
        Should.Throw<GrammarException>(() => engine.Prepare(english)).Message
            .ShouldBe("the grammar english: vosk's model does not know \"axillary\", \"respirations\"; use other words in the grammar or another model");
    }

    [Fact]
    public void After_a_refused_grammar_the_engine_goes_on_with_another()
    {
        using var engine = new VoskRecognizer(KoreanModel.Options());
        Grammar english = Grammar.Parse("#JSGF V1.0; grammar english; public <x> = respirations;", "english.jsgf");
        Should.Throw<GrammarException>(() => engine.Hear(new float[100], english));
        engine.Hear(new float[16_000], KoreanGrammars.Answers).Outcome.ShouldBe(HearingOutcome.Nothing);
    }
}
