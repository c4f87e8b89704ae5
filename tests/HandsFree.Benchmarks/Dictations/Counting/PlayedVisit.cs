namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>A visit with the share of wrong read-backs that the aide missed in it.</summary>
internal sealed record PlayedVisit(double MissRate, VisitResult Result);
