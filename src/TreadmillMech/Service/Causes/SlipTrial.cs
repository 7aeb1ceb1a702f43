namespace TreadmillMech.Service.Causes;

/// <summary>One kind of work between a slip test that gave way and the next: the best evidence there is.</summary>
/// <param name="Work">The only kind of work between the two tests.</param>
/// <param name="Turns">Turns given, where it was turns.</param>
/// <param name="Cured">Whether the later test held.</param>
internal readonly record struct SlipTrial(TrialWork Work, double Turns, bool Cured);
