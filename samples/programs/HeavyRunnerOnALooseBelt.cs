#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:property PublishAot=false

// What a heavy runner does to a loose belt: the same machine and runner at four tensions, second by second as the belt
// slips on its drive roller. Machine and runner are invented. Run: dotnet run HeavyRunnerOnALooseBelt.cs [FILE.csv]
//
// On a real machine: nobody heavier than its plate allows, never a customer or patient as a test load, safety key in
// reach, no adjusting while the belt moves. The maker's manual comes first.
using System.Globalization;
using TreadmillMech;
using TreadmillMech.Parts;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

Treadmill machine = new()
{
    Belt = new()
    {
        Width = Length.FromMillimeters(500),
        RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(9),
    },
    DriveRoller = new() { Diameter = Length.FromMillimeters(60), Friction = 0.28 },
    TailRoller = new() { Diameter = Length.FromMillimeters(60) },
    CentreDistance = Length.FromMillimeters(1450),
    TakeUp = new() { Thread = ScrewThread.Parse("M8") },
    Deck = new() { Friction = 0.16 },
    BeltDrag = Force.FromNewtons(25),
    DriveBelt = new()
    {
        Tensioning = Tensioning.SlidingMotor,
        MotorPulleyDiameter = Length.FromMillimeters(32),
        RollerPulleyDiameter = Length.FromMillimeters(110),
        CentreDistance = Length.FromMillimeters(210),
        Tension = Force.FromNewtons(320),
        Friction = 0.4,
    },
    Motor = new()
    {
        Constant = MotorConstant.FromVoltSecondsPerRadian(0.36),
        Resistance = ElectricResistance.FromOhms(0.9),
        FrictionTorque = Torque.FromNewtonMeters(0.12),
        VoltageLimit = ElectricPotential.FromVolts(180),
        CurrentLimit = ElectricCurrent.FromAmperes(22),
    },
};
Demand runner = new()
{
    Person = new() { Mass = Mass.FromKilograms(118) },
    Speed = Speed.FromMetersPerSecond(3.2),
};
DriveDynamics dynamics = new()
{
    MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.012),
    ArmatureInductance = ElectricInductance.FromMillihenries(2.5),
    Controller = new()
    {
        Sensor = SpeedSensor.Motor,
        Gain = ElectricCurrent.FromAmperes(40),
        IntegralTime = Duration.FromMilliseconds(300),
    },
};
DrivePlan plan = DrivePlan.Steady(Duration.FromSeconds(10));

double[] tensions = [600, 750, 900, 1200];
List<DriveSimulation> simulations = [];
foreach (double tension in tensions)
{
    Answer<DriveSimulation> answer = DriveSimulation.Of(
        machine with
        {
            RestTension = Force.FromNewtons(tension),
        },
        runner,
        dynamics
    );
    if (!answer.Is(out DriveSimulation? simulation))
    {
        Console.Error.WriteLine(answer.Missing);
        return 1;
    }

    simulations.Add(simulation);
}

Console.WriteLine("118 kg at 3.2 m/s, ten seconds; the last eight of them count");
Console.WriteLine("tension  belt speed   dip   slips  slide a step  rms current");
IReadOnlyList<Answer<DriveRun>> runs = DriveSimulation.RunAll(simulations, plan);
for (int i = 0; i < tensions.Length; i++)
{
    DriveRun run = runs[i].Value;
    DriveSummary sum = run.Summary(Duration.FromSeconds(2), Duration.FromSeconds(10));
    double steps = 8 * (machine with { RestTension = Force.FromNewtons(tensions[i]) }).At(runner).StepFrequency.Hertz;
    Console.WriteLine(
        $"{tensions[i], 5:F0} N  {sum.MeanSpeed.MetersPerSecond, 6:F2} m/s  {sum.Dip.Value.Percent, 4:F1} %  {sum.SlipShare.Percent, 4:F0} %  {sum.Slide.Millimeters / steps, 9:F1} mm  {sum.RmsCurrent.Amperes, 7:F2} A"
    );
}

if (args is [{ } path])
{
    using StreamWriter file = new(path);
    runs[0].Value.WriteCsv(file);
}

return 0;
