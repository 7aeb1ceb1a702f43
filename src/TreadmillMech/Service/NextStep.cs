using System.Collections.Immutable;

namespace TreadmillMech.Service;

/// <summary>One thing to do: the action, what the retest should show, when to stop, how to undo it.</summary>
public sealed partial record NextStep
{
    /// <summary>What to do.</summary>
    public required string Action { get; init; }

    /// <summary>What to expect at the retest.</summary>
    public required string Expect { get; init; }

    /// <summary>The value or sight at which to stop.</summary>
    public required string StopAt { get; init; }

    /// <summary>How to undo it; null where it cannot be undone.</summary>
    public string? Undo { get; init; }

    /// <summary>Minutes that it takes, common practice; null where nobody can say.</summary>
    public int? EffortMinutes { get; init; }

    /// <summary>Cautions for this step.</summary>
    public ImmutableArray<string> Cautions
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>What to do, and what to expect; the cautions are not in it.</summary>
    public override string ToString() => $"{Action} Expect: {Expect} Stop at: {StopAt}";
}
