namespace TreadmillMech.Tests.Conventions;

/// <summary>The layers of the library, lowest first: each may use those below it and nothing above.</summary>
internal static class Layers
{
    private static readonly HashSet<string> MachineNames =
    [
        nameof(Treadmill),
        nameof(Demand),
        nameof(Scenario),
        nameof(OperatingPoint),
        nameof(GaitWave),
        nameof(WeakContact),
        nameof(DriveSimulation),
        nameof(DriveRun),
        nameof(DriveSample),
        nameof(DriveSummary),
        nameof(DrivePlan),
        nameof(SpeedChange),
        nameof(UnusualStep),
        nameof(Jam),
    ];

    /// <summary>Layers in order; the namespace of the root is split into its words and its machine.</summary>
    internal static readonly string[] Order =
    [
        "Numbers",
        "Words",
        "Laws",
        "Model",
        "Parts",
        "Machine",
        "Studies",
        "Above",
        "Json",
    ];

    /// <summary>Layer of a file or type by its folder or namespace below the root, and its name.</summary>
    internal static int Of(string folder, string name) =>
        folder.Split('.', '/')[0] switch
        {
            "" => Array.IndexOf(Order, MachineNames.Contains(name) ? "Machine" : "Words"),
            "Service" => Array.IndexOf(Order, "Above"),
            string known => Array.IndexOf(Order, known),
        };

    internal static string RootFolder()
    {
        DirectoryInfo? place = new(AppContext.BaseDirectory);
        while (place is not null && !File.Exists(Path.Combine(place.FullName, "TreadmillMech.sln")))
        {
            place = place.Parent;
        }

        return place?.FullName ?? throw new InvalidOperationException("The tests run outside of the repository.");
    }

    /// <summary>Every source file of the library: folder below the root, name, and code without comments and strings.</summary>
    internal static IEnumerable<(string Folder, string Name, string Code)> Sources()
    {
        string root = Path.Combine(RootFolder(), "src", "TreadmillMech");
        return from file in Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            let place = Path.GetRelativePath(root, file).Replace('\\', '/')
            where !place.StartsWith("obj/", StringComparison.Ordinal)
            where !place.StartsWith("bin/", StringComparison.Ordinal)
            select (
                Path.GetDirectoryName(place)!.Replace('\\', '/'),
                Path.GetFileNameWithoutExtension(place),
                Laws.SourceTree.Code(File.ReadAllText(file))
            );
    }

    /// <summary>Name of a type without its number of type parameters.</summary>
    internal static string Plain(Type type) => type.Name.Split('`')[0];

    internal static string FolderOf(Type type)
    {
        string space = type.Namespace ?? "";
        const string Root = nameof(TreadmillMech);
        return space == Root ? "" : space[(Root.Length + 1)..];
    }
}
