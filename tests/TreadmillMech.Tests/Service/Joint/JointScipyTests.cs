using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>
/// One whole visit against scipy, which has its own equations, its own search and its own covariance: see
/// Service/Generators/joint_visit.py. Mains power and slip tests are left out there: they rest on the gait.
/// </summary>
public sealed class JointScipyTests
{
    private static readonly Treadmill Machine = Machines.Plain with
    {
        Motor = new()
        {
            Constant = TreadmillMech.MotorConstant.FromVoltSecondsPerRadian(0.28),
            Resistance = ElectricResistance.FromOhms(1),
        },
        DriveBelt = Machines.Plain.DriveBelt! with { MassPerLength = LinearDensity.FromKilogramsPerMeter(0.05) },
    };

    private static readonly VisitEvent[] Events =
    [
        Happened.Lift(30, 110),
        Happened.Lift(50, 222),
        Pulled(31, 150),
        Current(LoadState.Unloaded, 1.13, 1.5, 50.8, 173),
        Current(LoadState.Unloaded, 1.18, 3, 98.9, 346),
        Happened.Motor(LoadState.Loaded, 8.3, 3),
        new SpanFrequencyReading { Frequency = Frequency.FromHertz(165) },
        Happened.Locked(560, SlidContact.DriveBelt),
        new DriveBeltAction { Replaced = false },
        Happened.Locked(700, SlidContact.RunningBelt),
        Happened.Cleaned(CleanedPlace.Rollers),
        Happened.Turned(0.5),
        Happened.Locked(930, SlidContact.Nothing),
        Happened.Lift(30, 131),
        Happened.Cleaned(CleanedPlace.Deck),
        Happened.Oiled(15),
        Pulled(29, 122),
        Happened.Motor(LoadState.Unloaded, 1.07, 3),
        Happened.Motor(LoadState.Loaded, 6.9, 3),
    ];

    // What the readings tell is what is checked here, whatever share of the prior is left.
    private static readonly VisitEstimate Found = VisitEstimate
        .Of(
            Visits.Make(Machine, Events),
            VisitOptions.Default with
            {
                ObservedShare = VisitOptions.Default.ObservedShare with { Value = 0.999 },
            }
        )
        .Value;

    [Fact]
    public void ValuesAndUncertaintiesAreScipys()
    {
        Same("RestTensionAsFound", Found.RestTensionAsFound.Value, f => f.Newtons);
        Same("RestTensionNow", Found.RestTensionNow.Value, f => f.Newtons);
        Same("RelaxedForcePerWidth", Found.RelaxedForcePerWidth.Value, f => f.NewtonsPerMeter);
        Same("DeckFrictionAsFound", Found.DeckFrictionAsFound.Value, f => f);
        Same("DeckFrictionNow", Found.DeckFrictionNow.Value, f => f);
        Same("DriveRollerFrictionAsFound", Found.DriveRollerFrictionAsFound.Value, f => f);
        Same("DriveRollerFrictionNow", Found.DriveRollerFrictionNow.Value, f => f);
        Same("DriveBeltTensionAsFound", Found.DriveBeltTensionAsFound.Value, f => f.Newtons);
        Same("DriveBeltTensionNow", Found.DriveBeltTensionNow.Value, f => f.Newtons);
        Same("BeltDragAsFound", Found.BeltDragAsFound.Value, f => f.Newtons);
        Same("BeltDragNow", Found.BeltDragNow.Value, f => f.Newtons);
        Same("MotorFrictionTorque", Found.MotorFrictionTorque.Value, f => f.NewtonMeters);
        Same("NoLoadPull", Found.NoLoadPull.Value, f => f.Newtons);
        Same("MotorConstant", Found.MotorConstant.Value, f => f.VoltSecondsPerRadian);
        Same("ArmatureResistance", Found.ArmatureResistance.Value, f => f.Ohms);
    }

    [Fact]
    public void CorrelationsAndChiSquareAreScipys()
    {
        Close.Within(
            ScipyTable.Rows["correlation RestTensionAsFound RelaxedForcePerWidth"],
            Found.Correlation(VisitQuantity.RestTensionAsFound, VisitQuantity.RelaxedForcePerWidth).Value,
            1e-5
        );
        Close.Within(
            ScipyTable.Rows["correlation BeltDragAsFound MotorFrictionTorque"],
            Found.Correlation(VisitQuantity.BeltDragAsFound, VisitQuantity.MotorFrictionTorque).Value,
            1e-5
        );
        Close.To(ScipyTable.Rows["chi square"], Found.ChiSquare, 1e-6);

        // Three lifts, four pulls, five currents and two voltages, one pitch, two locked pulls that slid.
        Assert.Equal(17, Found.MeasuredNumbers);
    }

    [Fact]
    public void DragAndMotorFrictionAreHardlyToldApart()
    {
        VisitEstimate usual = VisitEstimate.Of(Visits.Make(Machine, Events)).Value;
        Assert.Contains(VisitQuantity.MotorFrictionTorque, usual.NotObserved);
        Shortfall missing = usual.MotorFrictionTorque.Missing;
        Assert.Equal(Reason.NotObservable, missing.Why);
        Assert.Equal("MotorFrictionTorque", missing.About);
        Assert.True(missing.Available > missing.Needed);
        Assert.True(usual.NoLoadPull.Found);
    }

    private static void Same<T>(string name, Estimate<T> found, Func<T, double> number)
        where T : struct
    {
        Close.To(ScipyTable.Rows[name], number(found.Value), 1e-6);
        Close.To(ScipyTable.Rows[name + ".uncertainty"], number(found.StandardUncertainty), 1e-5);
    }

    private static PullReading Pulled(double empty, double loaded) =>
        new()
        {
            Mass = Mass.FromKilograms(60),
            EmptyPull = Force.FromNewtons(empty),
            LoadedPull = Force.FromNewtons(loaded),
        };

    private static MotorCurrentReading Current(
        LoadState state,
        double amperes,
        double speed,
        double volts,
        double radians
    ) =>
        Happened.Motor(state, amperes, speed) with
        {
            Voltage = ElectricPotential.FromVolts(volts),
            MotorSpeed = RotationalSpeed.FromRadiansPerSecond(radians),
        };
}
