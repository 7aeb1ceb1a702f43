using System.Diagnostics;
using TreadmillMech.Model;
using TreadmillMech.Studies;

namespace TreadmillMech.Peers;

/// <summary>A million draws of twelve uncertain inputs of one machine, and two percentiles of its margin.</summary>
internal static class MonteCarlo
{
    /// <summary>What is uncertain, with its relative standard uncertainty; the script beside has the same list.</summary>
    private static readonly (Input Input, double Value, double Relative)[] Uncertain =
    [
        (Inputs.RestTension, 1000, 0.05),
        (Inputs.BeltStiffness, 450000, 0.1),
        (Inputs.DriveRollerFriction, 0.36, 0.05),
        (Inputs.DeckFriction, 0.17, 0.08),
        (Inputs.BeltDrag, 28, 0.1),
        (Inputs.DriveBeltTension, 330, 0.05),
        (Inputs.DriveBeltFriction, 0.38, 0.05),
        (Inputs.MotorConstant, 0.3, 0.02),
        (Inputs.PersonMass, 80, 0.02),
        (Inputs.LegLength, 0.91, 0.02),
        (Inputs.BeltSpeed, 3.2, 0.01),
        (Inputs.StrikePosition, 0.4, 0.05),
    ];

    private static readonly double[] Shares = [0.025, 0.5, 0.975];

    /// <summary>Nanoseconds a draw, then the 2.5th, 50th and 97.5th percentile of the belt's margin.</summary>
    internal static string Run(Columns columns, int draws, int threads)
    {
        TypedPeer typed = new(columns);
        Study study = Study.Of(typed.Machine(0), typed.Demand(0));
        List<UncertainInput> inputs = [];
        foreach ((Input input, double value, double relative) in Uncertain)
        {
            PhysicalValue usual = PhysicalValue.Of(value, input.Unit);
            study = study.With(input, usual);
            inputs.Add(UncertainInput.Normal(input, usual, PhysicalValue.Of(value * relative, input.Unit)));
        }

        Stopwatch watch = Stopwatch.StartNew();
        Answer<SampledUncertainty> answer = study.Sample(
            Outputs.BeltMargin,
            inputs,
            seed: 1,
            new() { Draws = draws, MostThreads = threads }
        );
        SampledUncertainty found = answer.Is(out SampledUncertainty? sampled)
            ? sampled
            : throw new InvalidOperationException($"{answer.Missing}");
        double[] percentiles = [.. Shares.Select(share => found.Sorted[(int)(share * found.Draws)])];
        return $"{watch.Elapsed.TotalNanoseconds / draws:G6} {string.Join(' ', percentiles.Select(p => p.ToString("R")))}";
    }
}
