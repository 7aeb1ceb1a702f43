using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>A further reading that would settle something.</summary>
/// <param name="Reading">What to read and how.</param>
/// <param name="Settles">What it settles.</param>
/// <param name="Gain">What it is expected to bring, in words; empty where that cannot be told beforehand.</param>
/// <param name="Minutes">How long it takes, common practice.</param>
public sealed partial record ReadingProposal(string Reading, string Settles, string Gain, int Minutes)
{
    /// <summary>The reading, what it settles, and the minutes it takes.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Reading} ({Minutes} min): {Settles}; {Gain}");
}
