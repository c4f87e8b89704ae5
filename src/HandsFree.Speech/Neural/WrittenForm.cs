namespace HandsFree.Speech.Neural;

/// <summary>One way to write a word after a joint.</summary>
/// <param name="Text">What is written, with what stands before it (blank, comma, hyphen); may be empty.</param>
/// <param name="Joint">How it was written.</param>
internal readonly record struct WrittenForm(string Text, Joint Joint);
