namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>The visits that come with the program, inside it so that they are found wherever it runs.</summary>
internal static class Bundled
{
    internal const string Healthy = "healthy.json";
    internal const string Slipping = "slips-under-heavy-user.json";
    internal const string Glazed = "drive-belt-slips.json";
    internal const string DryDeck = "dry-deck.json";
    internal const string Oil = "oil-on-drive-roller.json";
    internal const string OverTightened = "over-tightened.json";
    internal const string Dipping = "dips-at-each-step.json";

    private const string Extension = ".json";

    /// <summary>All of them, with what each is about.</summary>
    internal static readonly IReadOnlyList<(string Name, string About)> All =
    [
        (Healthy, "nothing wrong: the readings of a sound machine"),
        (Slipping, "slack running belt: slips under a heavy user, holds after three quarters of a turn"),
        (Glazed, "glazed drive belt: the motor turns, the roller lags, the running belt is tight enough"),
        (DryDeck, "dry deck: current before and after cleaning and lubricating, with earlier visits"),
        (Oil, "oil on the drive roller: tight belt, low current, and it slips all the same"),
        (OverTightened, "over-tightened by a former hand: a roller bearing runs hot and rumbles"),
        (Dipping, "flywheel and controller known: what each step of a heavy user does to the belt's speed"),
    ];

    /// <summary>The name as it is bundled, with or without its ending; null where no bundled visit has it.</summary>
    internal static string? Find(string name) =>
        All.Select(static visit => visit.Name).FirstOrDefault(known => known == name || known == name + Extension);

    /// <summary>The list that is printed: names as they can be given, and what each is about.</summary>
    internal static string Listed() =>
        string.Concat(All.Select(static visit => $"{visit.Name[..^Extension.Length], -24}{visit.About}\n"));

    internal static byte[]? Read(string name, out string trouble)
    {
        trouble = $"{name}: found no such visit in the program.";
        using Stream? stream = typeof(Bundled).Assembly.GetManifestResourceStream(name);
        if (stream is null)
        {
            return null;
        }

        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
