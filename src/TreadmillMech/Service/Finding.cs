using System.Collections.Immutable;

namespace TreadmillMech.Service;

/// <summary>Something found at a visit: what, how grave, the number and its limit, what to do, what to expect.</summary>
public sealed partial record Finding
{
    /// <summary>What it is about.</summary>
    public required Subject Subject { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What was found, one sentence.</summary>
    public required string Statement { get; init; }

    /// <summary>The number behind it; null where it was seen, not measured.</summary>
    public Figure? Number { get; init; }

    /// <summary>The limit it was judged by; null where none applies.</summary>
    public Threshold? Limit { get; init; }

    /// <summary>Further limits that the finding or its step went by.</summary>
    public ImmutableArray<Threshold> AlsoBy
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>All limits that the finding or its step went by.</summary>
    public ImmutableArray<Threshold> Limits => Limit is null ? AlsoBy : [Limit, .. AlsoBy.Where(l => l != Limit)];

    /// <summary>What it means to the owner, one sentence without forces and probabilities; null where nothing.</summary>
    public string? ForOwner { get; init; }

    /// <summary>What speaks for it.</summary>
    public ImmutableArray<string> For
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>What speaks against it.</summary>
    public ImmutableArray<string> Against
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>What to do about it; null where there is nothing to do.</summary>
    public NextStep? Next { get; init; }

    /// <summary>What was found, how grave it is, and the limit it was judged by; invariant.</summary>
    public override string ToString() =>
        $"{Severity}, {Subject}: {Statement}{(Limit is null ? "" : $" Limit: {Limit.Name}, {Limit}.")}";
}
