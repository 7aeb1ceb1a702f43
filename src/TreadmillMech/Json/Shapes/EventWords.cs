using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>What the tables of readings and actions have in common.</summary>
internal static class EventWords
{
    /// <summary>The names of the readings.</summary>
    internal static readonly WordTable<string> Readings = Same(
        "bolts",
        "brush",
        "coastDown",
        "current",
        "driveBelt",
        "groove",
        "incline",
        "level",
        "lift",
        "lockedPull",
        "mainsPower",
        "mainsVoltage",
        "marks",
        "passes",
        "pull",
        "slipTest",
        "spanFrequency",
        "speeds",
        "symptom",
        "temperature",
        "thread",
        "tracking",
        "wipe"
    );

    /// <summary>The names of the actions.</summary>
    internal static readonly WordTable<string> Actions = Same("clean", "driveBelt", "lubricate", "takeUp");

    /// <summary>The field that every reading may have.</summary>
    internal static void Uncertainty<T>(ObjectShape<T> it)
        where T : Reading =>
        it.May(
            "uncertainty",
            JsonKinds.Share,
            static reading => reading.RelativeUncertainty,
            static (reading, v) => (T)((Reading)reading with { RelativeUncertainty = v }),
            "relative standard uncertainty",
            nameof(Reading.RelativeUncertainty)
        );

    /// <summary>Refuses a clamp that cannot read the current of the lead it was put on.</summary>
    internal static void RefuseForm(ObjectReader fields, string lead, string form, string found, string expected)
    {
        if (fields.Says("where", lead) && fields.Says("form", form))
        {
            fields.Refuse("form", found, expected);
        }
    }

    private static WordTable<string> Same(params string[] words) => new([.. words.Select(static word => (word, word))]);
}
