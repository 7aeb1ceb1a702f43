namespace TreadmillMech.Tests.Laws;

/// <summary>Points that fill a box evenly, the same in every run: multiples of a generalised golden ratio.</summary>
internal static class Spread
{
    internal static IEnumerable<double[]> Over(IReadOnlyList<Argument> box, int count)
    {
        // The root of x^(d+1) = x + 1, whose powers are hardest to approximate by fractions.
        double root = 1.5;
        for (int i = 0; i < 60; i++)
        {
            root = Math.Pow(1 + root, 1.0 / (box.Count + 1));
        }

        for (int point = 1; point <= count; point++)
        {
            double[] place = new double[box.Count];
            for (int i = 0; i < place.Length; i++)
            {
                double share = (0.5 + (point * Math.Pow(root, -(i + 1)))) % 1;
                place[i] = box[i].From + (share * (box[i].To - box[i].From));
            }

            yield return place;
        }
    }
}
