using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace AotCheck;

/// <summary>A whole visit, from readings and actions to the sheet, line by line.</summary>
internal static class VisitRoom
{
    internal static void Visit(Report report)
    {
        SpeedReading unloaded = new()
        {
            State = LoadState.Unloaded,
            Motor = RotationalSpeed.FromRevolutionsPerMinute(2400),
            DriveRoller = RotationalSpeed.FromRevolutionsPerMinute(760),
            Belt = Speed.FromKilometersPerHour(8.6),
        };
        Visit visit = new()
        {
            Machine = Example.Machine,
            TestDemand = Example.Demands[1].Demand,
            EarlierTurns = 0.25,
            Events =
            [
                new WipeReading { Place = WipedPlace.DriveRoller, Trace = WipedTrace.Dust },
                new DriveBeltReading { Look = DriveBeltLook.Sound },
                unloaded,
                unloaded with
                {
                    State = LoadState.Loaded,
                    Belt = Speed.FromKilometersPerHour(8.1),
                },
                Amperes(LoadState.Loaded, 9.5, CurrentForm.Direct),
                Amperes(LoadState.Loaded, 3, CurrentForm.Alternating),
                new CleanAction { Place = CleanedPlace.Rollers },
                new LubricateAction { Volume = Volume.FromMilliliters(8) },
                Amperes(LoadState.Loaded, 7.2, CurrentForm.Direct),
                new LiftReading { Height = Length.FromMillimeters(20), Force = Force.FromPoundsForce(11) },
                new TakeUpAction { LeftTurns = 0.25, RightTurns = 0.25 },
                new TrackingReading { DriftToRight = Length.FromMillimeters(-6), Passes = 30 },
                new SlipTestReading { Slipped = false },
            ],
        };
        Print(report, VisitReview.Of(visit));
    }

    private static MotorCurrentReading Amperes(LoadState state, double amperes, CurrentForm form) =>
        new()
        {
            State = state,
            Current = ElectricCurrent.FromAmperes(amperes),
            BeltSpeed = Speed.FromMilesPerHour(4),
            Form = form,
            Response = MeterResponse.TrueRms,
            Zeroed = true,
        };

    private static void Print(Report report, VisitSheet sheet)
    {
        report.Add("visit: verdict", $"{sheet.Verdict}: {sheet.VerdictText}");
        report.AddAll("visit: safety", sheet.SafetyNow);
        foreach (NextStep step in sheet.NextSteps)
        {
            report.Add("visit: next", $"{step.Action} {step.Expect} {step.StopAt} {step.Undo}");
            report.AddAll("visit: caution", step.Cautions);
        }

        foreach (Finding finding in sheet.Findings)
        {
            report.Add("visit: finding", $"{finding.Subject}, {finding.Severity}: {finding.Statement}");
            report.Add("visit: finding number", finding.Number?.Value ?? 0);
            report.AddAll("visit: for", finding.For);
            report.AddAll("visit: against", finding.Against);
        }

        foreach (ReadingRow row in sheet.Readings)
        {
            report.Add($"visit: {row.Name} found", row.AsFound?.Value ?? 0);
            report.Add($"visit: {row.Name} left", row.AsLeft?.Value ?? 0);
        }

        foreach (LadderStep rung in sheet.Ladder)
        {
            report.Add("visit: ladder turns", rung.Turns);
            report.Add("visit: ladder margin", rung.Margin, f => f.Value);
        }

        report.AddAll("visit: refused", sheet.Refused.Select(r => r.ToString()));
        report.Add("visit: budget", sheet.Budget.Tension, f => f.Value);
        report.Add("visit: turns left", sheet.Budget.TurnsLeft);
        report.Add("visit: limited by", sheet.Budget.LimitedBy);
        report.AddAll("visit: one more reading", sheet.OneMoreReading.Select(r => r.ToString()));
        report.AddAll("visit: notice", sheet.Notices);
        report.AddAll("visit: owner", sheet.OwnerPage);
    }
}
