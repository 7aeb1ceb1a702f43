namespace TreadmillMech.Studies;

/// <summary>Columns in memory that are held in place, and what to do with them.</summary>
/// <param name="Inputs">Starts of the columns of inputs.</param>
/// <param name="Results">Starts of the columns of outputs; empty where they are not wanted.</param>
/// <param name="Statuses">Start of the statuses; 0 where they are not wanted.</param>
/// <param name="Rows">How many rows.</param>
/// <param name="FirstRow">Number of the first one in the whole run.</param>
/// <param name="Pass">What the pass is for.</param>
internal readonly record struct BatchWork(
    nint[] Inputs,
    nint[] Results,
    nint Statuses,
    int Rows,
    long FirstRow,
    BatchPass Pass
);
