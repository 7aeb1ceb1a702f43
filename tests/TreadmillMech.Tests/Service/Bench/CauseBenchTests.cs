using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Simulated visits with hidden causes: how often the right cause stands first.</summary>
public sealed class CauseBenchTests(ITestOutputHelper output)
{
    private const int EachCause = 60;

    [Fact]
    public void TheRightCauseStandsFirst()
    {
        double share = Run(thoroughness: 0.95, error: null, out string table);
        output.WriteLine(table);
        Assert.InRange(share, 0.95, 1);
    }

    private static double Run(double thoroughness, ModelError? error, out string table)
    {
        List<string> lines = [];
        int right = 0;
        int all = 0;
        foreach (Cause cause in Enum.GetValues<Cause>())
        {
            Dictionary<Cause, int> firsts = [];
            for (int i = 0; i < EachCause; i++)
            {
                Random random = new((1000 * (int)cause) + i);
                Visit visit = new Technician(Draw.State(cause, random), random, thoroughness, error).Visit();
                Cause first = VisitReview.Of(visit).Causes[0].Cause;
                firsts[first] = firsts.GetValueOrDefault(first) + 1;
            }

            right += firsts.GetValueOrDefault(cause);
            all += EachCause;
            string others = string.Join(", ", firsts.Where(f => f.Key != cause).Select(f => $"{f.Key} {f.Value}"));
            lines.Add($"{cause} {firsts.GetValueOrDefault(cause)}/{EachCause} {others}");
        }

        table = string.Join('\n', lines);
        return (double)right / all;
    }
}
