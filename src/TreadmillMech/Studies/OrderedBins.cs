namespace TreadmillMech.Studies;

/// <summary>Counts of numbers by their sign, exponent and first twelve binary digits: bins in rising order, 1/4096 wide.</summary>
internal sealed class OrderedBins
{
    private const int BinsAPage = 4096;
    private readonly long[]?[] pages = new long[]?[4096];

    internal long Count { get; private set; }

    internal static int Of(double value)
    {
        ulong bits = BitConverter.DoubleToUInt64Bits(value + 0.0);
        ulong ordered = (bits >> 63) == 0 ? bits ^ (1UL << 63) : ~bits;
        return (int)(ordered >> 40);
    }

    /// <summary>Least and largest number of a bin.</summary>
    internal static Bounds Ends(int bin)
    {
        ulong low = (ulong)bin << 40;
        return new(Back(low), Back(low | ((1UL << 40) - 1)));
    }

    internal void Add(double value)
    {
        int bin = Of(value);
        (pages[bin / BinsAPage] ??= new long[BinsAPage])[bin % BinsAPage]++;
        Count++;
    }

    internal void Add(OrderedBins other)
    {
        for (int page = 0; page < pages.Length; page++)
        {
            if (other.pages[page] is { } more)
            {
                long[] mine = pages[page] ??= new long[BinsAPage];
                for (int i = 0; i < BinsAPage; i++)
                {
                    mine[i] += more[i];
                }
            }
        }

        Count += other.Count;
    }

    internal void Clear()
    {
        foreach (long[]? page in pages)
        {
            page?.AsSpan().Clear();
        }

        Count = 0;
    }

    /// <summary>The bin that holds the number of a rank, from 0, and how many numbers lie in the bins below it.</summary>
    internal (int Bin, long Below) AtRank(long rank)
    {
        long below = 0;
        for (int page = 0; page < pages.Length; page++)
        {
            if (pages[page] is { } counts)
            {
                for (int i = 0; i < BinsAPage; i++)
                {
                    if (below + counts[i] > rank)
                    {
                        return ((page * BinsAPage) + i, below);
                    }

                    below += counts[i];
                }
            }
        }

        throw new InvalidOperationException($"Rank {rank} of {Count}.");
    }

    private static double Back(ulong ordered) =>
        BitConverter.UInt64BitsToDouble((ordered >> 63) == 1 ? ordered ^ (1UL << 63) : ~ordered);
}
