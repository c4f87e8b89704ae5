namespace HandsFree.App.Homes;

/// <summary>That recordings are kept, and who answers for it.</summary>
/// <param name="ApprovedBy">The person's name.</param>
/// <param name="ApprovedOn">The day.</param>
/// <param name="Days">After how many days a recording is deleted, 1 to 90.</param>
internal sealed record KeepingAudio(string ApprovedBy, DateOnly ApprovedOn, int Days)
{
    /// <summary>The days where the home's file names none.</summary>
    public const int UsualDays = 14;
}
