using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>A case gives the same bits whichever cases stand beside it.</summary>
public sealed class LaneNeighbourTests
{
    [Fact]
    public void ALaneDoesNotDependOnItsNeighbours() =>
        NumberTypesAgreeTests.EveryKind(
            (kinds, machines, plain) =>
            {
                MachineNumbers<Lanes> together = NumberTypesAgreeTests.Side(machines);
                OperatingPointModel.Run(in together, in kinds, out OutputNumbers<Lanes> mixed);
                for (int k = 0; k < machines.Length; k++)
                {
                    MachineNumbers<Lanes> alone = machines[k].Lift<Lanes>();
                    OperatingPointModel.Run(in alone, in kinds, out OutputNumbers<Lanes> same);
                    foreach (Output output in Outputs.All)
                    {
                        NumberTypesAgreeTests.Same(
                            kinds,
                            output,
                            same.AsSpan()[output.Index][0],
                            mixed.AsSpan()[output.Index][k],
                            0
                        );
                    }
                }
            }
        );
}
