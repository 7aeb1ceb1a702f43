using System.Globalization;
using TreadmillMech.Tests.Service.Bench;

namespace TreadmillMech.VisitBench;

/// <summary>The bench of simulated visits on machines of one's own choice: how many of each cause, and the first seed.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (
            args.Length > 2
            || !Number(args, 0, BenchRun.UsualOfEach, out int each)
            || !Number(args, 1, 1, out int seed)
        )
        {
            Console.Error.WriteLine("Expected: [visits of each cause, 1 to 999] [first seed, 0 or more]");
            return 2;
        }

        Console.Write(BenchPage.Text(BenchPage.Of(each, seed), each));
        return 0;
    }

    private static bool Number(string[] args, int at, int usual, out int number)
    {
        number = usual;
        return at >= args.Length
            || (
                int.TryParse(args[at], NumberStyles.None, CultureInfo.InvariantCulture, out number)
                && (at > 0 || number is >= 1 and <= 999)
            );
    }
}
