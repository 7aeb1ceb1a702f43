using System.Numerics;

namespace TreadmillMech;

/// <summary>A set of notices: one bit for each row of a table of ranges. The default is the empty set.</summary>
/// <param name="Bits">One bit a row, the first row in the lowest bit; at most 53 rows.</param>
public readonly record struct Notices(ulong Bits)
{
    /// <summary>Whether there is nothing to say.</summary>
    public bool None => Bits == 0;

    /// <summary>How many notices there are.</summary>
    public int Count => BitOperations.PopCount(Bits);

    /// <summary>Both sets together.</summary>
    /// <param name="left">One set.</param>
    /// <param name="right">The other.</param>
    public static Notices operator |(Notices left, Notices right) => new(left.Bits | right.Bits);

    /// <summary>The rows of a table that this set names, in the table's order.</summary>
    /// <param name="table">The table the bits refer to.</param>
    /// <exception cref="ArgumentNullException">The table is null.</exception>
    public IReadOnlyList<Notice> Describe(IReadOnlyList<Notice> table)
    {
        ArgumentNullException.ThrowIfNull(table);
        List<Notice> named = new(Count);
        for (int row = 0; row < table.Count; row++)
        {
            if ((Bits >> row & 1) != 0)
            {
                named.Add(table[row]);
            }
        }

        return named;
    }

    /// <summary>How many notices there are, in words.</summary>
    public override string ToString() => None ? "no notices" : $"{Count} notice{(Count == 1 ? "" : "s")}";
}
