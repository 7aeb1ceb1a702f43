using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Torque over force and diameter of a bolt, head or nut included, with the scatter of the force.</summary>
/// <remarks>
/// The scatter is that of Shigley's Mechanical Engineering Design, 9th ed.: table 8-14 for lubricated bolts, read; table 8-13
/// for dry ones, from memory.
/// </remarks>
public sealed record NutFactor
{
    private const string Table =
        "Bowman Distribution, Fastener Facts, 1985, p. 90, read as quoted; the same in Shigley 9th ed., table 8-15";
    private const double Dry = 0.143;
    private const double Oiled = 0.084;

    /// <summary>A nut factor.</summary>
    /// <param name="value">Nut factor, 0.05 to 0.6.</param>
    /// <param name="forceScatter">Relative standard deviation of the force at one torque, 0 to 50 %.</param>
    /// <param name="source">Where both come from.</param>
    /// <exception cref="ArgumentNullException">The source is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public NutFactor(double value, Ratio forceScatter, string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Value = Guard.Within(value, Si.One, 0.05, 0.6, nameof(value));
        ForceScatter = Guard.Within(forceScatter, Si.Ratio, 0, 0.5, nameof(forceScatter));
        Source = source;
    }

    /// <summary>Bare black bolts: 0.30; scatter of dry bolts, 14.3 % (20 bolts).</summary>
    public static NutFactor Black { get; } = new(0.30, Si.Ratio.FromSi(Dry), Table);

    /// <summary>Zinc-plated bolts: 0.20; scatter of dry bolts, 14.3 %.</summary>
    public static NutFactor ZincPlated { get; } = new(0.20, Si.Ratio.FromSi(Dry), Table);

    /// <summary>Lubricated bolts: 0.18; their own scatter, 8.4 % (10 bolts).</summary>
    public static NutFactor Lubricated { get; } = new(0.18, Si.Ratio.FromSi(Oiled), Table);

    /// <summary>Cadmium-plated bolts: 0.16; scatter of dry bolts, 14.3 %.</summary>
    public static NutFactor CadmiumPlated { get; } = new(0.16, Si.Ratio.FromSi(Dry), Table);

    /// <summary>Nut factor.</summary>
    public double Value { get; }

    /// <summary>Relative standard deviation of the force at one torque.</summary>
    public Ratio ForceScatter { get; }

    /// <summary>Where both come from.</summary>
    public string Source { get; }

    /// <summary>Torque that turns a bolt against an axial force.</summary>
    /// <param name="thread">The bolt's thread.</param>
    /// <param name="force">Axial force, 1 N to 1 MN.</param>
    /// <returns>The torque; no answer where only the lead of the thread is known.</returns>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public Answer<Torque> TorqueFor(ScrewThread thread, Force force)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double axial = Si.Force.ToSi(Guard.Within(force, Si.Force, 1, 1e6, nameof(force)));
        return Inquiry
            .Of(thread.NominalDiameter, nameof(ScrewThread.NominalDiameter))
            .Then(nominal =>
                Si.Torque.FromSi(ScrewTorqueLaws.TorqueByNutFactor<Real>(axial, Si.Length.ToSi(nominal), Value))
            );
    }
}
