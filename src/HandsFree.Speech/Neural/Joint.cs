namespace HandsFree.Speech.Neural;

/// <summary>How the last word was written, which decides how the next may join on.</summary>
internal enum Joint
{
    /// <summary>Nothing is written yet.</summary>
    Start,

    /// <summary>In letters.</summary>
    Letters,

    /// <summary>A tens word in letters; a digit word may join with a hyphen.</summary>
    TensLetters,

    /// <summary>One digit word as a figure: "hundred" may follow.</summary>
    Figure,

    /// <summary>A number of two or more figures.</summary>
    Figures,

    /// <summary>A tens word as "20": a digit word would make "twenty one" of it, which is never written "20 1".</summary>
    TensFigures,

    /// <summary>"one hundred" as "100": what follows in the number would never be written behind it.</summary>
    HundredFigures,

    /// <summary>"twenty" written as "2": its digit must follow at once.</summary>
    TensOpen,

    /// <summary>"one hundred" written as "1": two figures must follow at once.</summary>
    HundredOpen,

    /// <summary>"a" of "a hundred", nothing written yet: "100" must follow.</summary>
    AHundred,

    /// <summary>A decimal point, a slash or a dash: figures must follow at once.</summary>
    Sign,
}
