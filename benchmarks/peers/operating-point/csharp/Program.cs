using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Peers;

// Serves the peers in C#: "FOLDER KIND", then rounds as standard input asks for them, like the program in C++ beside.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Columns columns = new(args[0]);
Peer peer = args[1] switch
{
    "real" => new RealPeer(columns, typedView: false),
    "view" => new RealPeer(columns, typedView: true),
    "slope" => new SlopePeer(columns),
    "typed" => new TypedPeer(columns),
    "lanes" => new LanesPeer(columns),
    "batch" => new BatchPeer(columns),
    "quantities" => new QuantitiesPeer(columns),
    _ => throw new ArgumentException($"no such peer: {args[1]}", nameof(args)),
};
while (Console.ReadLine() is { } line && line != "quit")
{
    string[] words = line.Split(' ');
    if (words[0] == "about")
    {
        Console.WriteLine(
            $"{RuntimeInformation.FrameworkDescription}, 512-bit registers {(Vector512.IsHardwareAccelerated ? "used" : "not used")}"
        );
        continue;
    }

    int rows = int.Parse(words[1], CultureInfo.InvariantCulture);
    long times = words[0] == "cache" ? int.Parse(words[2], CultureInfo.InvariantCulture) : 1;
    if (words[0] == "montecarlo")
    {
        Console.WriteLine(MonteCarlo.Run(columns, rows, int.Parse(words[2], CultureInfo.InvariantCulture)));
        continue;
    }

    long allocated = GC.GetTotalAllocatedBytes(precise: true);
    Stopwatch watch = Stopwatch.StartNew();
    switch (words[0])
    {
        case "memory":
            peer.RunOn(words.Length > 2 ? int.Parse(words[2], CultureInfo.InvariantCulture) : 1, rows);
            break;
        case "write":
            peer.Run(0, rows);
            columns.Write(words[2], rows);
            break;
        default:
            for (long k = 0; k < times; k++)
            {
                peer.Run(0, rows);
            }

            break;
    }

    double nanoseconds = watch.Elapsed.TotalNanoseconds / rows / times;
    double bytes = (double)(GC.GetTotalAllocatedBytes(precise: true) - allocated) / rows / times;
    Console.WriteLine($"{nanoseconds:G6} {bytes:G4}");
}
