using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>One row at a time on plain numbers, for processors without registers of 256 bits.</summary>
internal sealed unsafe class PlainKernel : RowKernel
{
    private readonly Input[] columns;
    private readonly double[] units;
    private readonly Output[] outputs;
    private readonly MachineNumbers<Real> usual;
    private Scenario here;

    internal PlainKernel(in Scenario scenario, Input[] columns, ReadOnlySpan<double> units, Output[] outputs)
    {
        this.units = [.. units];
        this.columns = columns;
        this.outputs = outputs;
        here = scenario;
        usual = scenario.Numbers;
    }

    public override void Dispose() { }

    internal override bool Run(ReadOnlySpan<nint> columns, int first, int rows, double* results, double* statuses)
    {
        bool answered = true;
        for (int row = 0; row < rows; row++)
        {
            RowStatus status = One(columns, first + row, results + row);
            statuses[row] = (double)status;
            answered &= status == RowStatus.Answered;
        }

        return answered;
    }

    private RowStatus One(ReadOnlySpan<nint> starts, int row, double* results)
    {
        RowStatus status = RowStatus.Answered;
        Span<Real> fields = here.Numbers.AsSpan();
        MachineNumbers<Real> stands = usual;
        for (int i = 0; i < columns.Length; i++)
        {
            double value = ((double*)starts[i])[row] * units[i];
            bool within = columns[i].Range.Holds(value);
            if (!within && status == RowStatus.Answered)
            {
                status = double.IsNaN(value) ? RowStatus.NotANumber : RowStatus.OutOfRange;
            }

            int field = columns[i].Index;
            fields[field] = within ? value : stands.AsSpan()[field];
        }

        OperatingPoint point = OperatingPoint.Of(in here);
        RowStatus given = status;
        for (int i = 0; i < outputs.Length; i++)
        {
            Answer<double> answer = point.Number(outputs[i]);
            bool there = given == RowStatus.Answered && answer.Found;
            results[i * Tile] = there ? answer.Value : double.NaN;
            if (status == RowStatus.Answered && !there)
            {
                status = Why(answer.Missing);
            }
        }

        return status;
    }

    private static RowStatus Why(Shortfall missing) =>
        missing.Why switch
        {
            Reason.SlackBelt => RowStatus.SlackBelt,
            Reason.PartsOverlap => RowStatus.PartsOverlap,
            Reason.DriveCannotBrake => RowStatus.DriveCannotBrake,
            Reason.MotorCannotReachSpeed => RowStatus.MotorCannotReachSpeed,
            Reason.CurrentLimit => RowStatus.CurrentLimit,
            _ => missing.About == Inputs.StrikePosition.Name ? RowStatus.OutOfRange : RowStatus.NoNumber,
        };
}
