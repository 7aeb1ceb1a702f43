namespace TreadmillMech.Studies;

/// <summary>Sorts many numbers: by their bytes, from the last to the first, which takes as long whatever their order.</summary>
internal static class Sorting
{
    private const int Bytes = sizeof(ulong);
    private const int Values = 256;

    /// <summary>Sorts numbers, none of them NaN, in rising order.</summary>
    /// <param name="numbers">The numbers.</param>
    /// <param name="room">As much working space.</param>
    internal static void Sort(Span<double> numbers, Span<double> room)
    {
        Span<int> counts = stackalloc int[Bytes * Values];
        counts.Clear();
        foreach (double number in numbers)
        {
            ulong key = Key(number);
            for (int place = 0; place < Bytes; place++)
            {
                counts[(place * Values) + (int)((key >> (8 * place)) & 0xFF)]++;
            }
        }

        Span<double> from = numbers;
        Span<double> to = room[..numbers.Length];
        for (int place = 0; place < Bytes; place++)
        {
            Span<int> starts = counts.Slice(place * Values, Values);
            if (starts.Contains(numbers.Length))
            {
                // All of them have this byte.
                continue;
            }

            int start = 0;
            for (int i = 0; i < Values; i++)
            {
                (starts[i], start) = (start, start + starts[i]);
            }

            foreach (double number in from)
            {
                to[starts[(int)((Key(number) >> (8 * place)) & 0xFF)]++] = number;
            }

            Span<double> other = from;
            from = to;
            to = other;
        }

        if (from != numbers)
        {
            from.CopyTo(numbers);
        }
    }

    // In the order of the numbers.
    private static ulong Key(double number)
    {
        long bits = BitConverter.DoubleToInt64Bits(number);
        return (ulong)(bits ^ ((bits >> 63) | long.MinValue));
    }
}
