using System.Globalization;

namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>Some rows of a fleet that are in memory at a time, column by column. Used again for the next rows.</summary>
internal sealed class Chunk
{
    private readonly Dictionary<int, string> troubles = [];

    internal Chunk(IReadOnlyList<FleetColumn> columns, int room)
    {
        Columns = columns;
        Values = new double[columns.Count][];
        Results = new double[FleetOutputs.All.Count][];
        Reserve(room);
    }

    /// <summary>The columns that were read.</summary>
    internal IReadOnlyList<FleetColumn> Columns { get; }

    /// <summary>How many rows are in it.</summary>
    internal int Count { get; set; }

    /// <summary>Number of its first row in the file: line in a text file, row from 1 otherwise.</summary>
    internal long[] Lines { get; private set; } = [];

    /// <summary>Names of the machines.</summary>
    internal string[] Machines { get; private set; } = [];

    /// <summary>Inputs in SI, one array a column; NaN where the file has no usable number.</summary>
    internal double[][] Values { get; }

    /// <summary>Outputs in SI, one array for each of <see cref="FleetOutputs.All"/>; NaN where there is no answer.</summary>
    internal double[][] Results { get; }

    /// <summary>What became of each row.</summary>
    internal Outcome[] Outcomes { get; private set; } = [];

    /// <summary>What is wrong with a row; empty where nothing is.</summary>
    internal string Trouble(int row) => troubles.GetValueOrDefault(row, "");

    internal bool IsBad(int row) => troubles.ContainsKey(row);

    /// <summary>Notes what is wrong with a value; the first is kept.</summary>
    internal void Blame(int row, string what) => troubles.TryAdd(row, what);

    /// <summary>Empties it, with room for so many rows.</summary>
    internal void Reserve(int room)
    {
        Count = 0;
        troubles.Clear();
        if (Lines.Length >= room)
        {
            return;
        }

        (Lines, Machines, Outcomes) = (new long[room], new string[room], new Outcome[room]);
        for (int i = 0; i < Values.Length; i++)
        {
            Values[i] = new double[room];
        }

        for (int i = 0; i < Results.Length; i++)
        {
            Results[i] = new double[room];
        }
    }

    /// <summary>Sets a value, given in the unit of its column, and checks it against the range of the input.</summary>
    internal void Set(int row, int column, double value)
    {
        FleetColumn of = Columns[column];
        double si = value * of.Factor;
        Values[column][row] = si;
        if (!of.Input.Range.Holds(si))
        {
            Values[column][row] = double.NaN;
            Blame(
                row,
                string.Create(CultureInfo.InvariantCulture, $"{of.Header}: {value:R} is outside {Permitted(of)}")
            );
        }
    }

    /// <summary>Notes that a value is missing or no number.</summary>
    internal void Refuse(int row, int column, string text)
    {
        Values[column][row] = double.NaN;
        string header = Columns[column].Header;
        Blame(row, text.Length == 0 ? $"{header}: empty" : $"{header}: '{text}' is no number");
    }

    private static string Permitted(FleetColumn column)
    {
        Bounds range = column.Input.Range;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{range.From / column.Factor:G4} to {range.To / column.Factor:G4}"
        );
    }
}
