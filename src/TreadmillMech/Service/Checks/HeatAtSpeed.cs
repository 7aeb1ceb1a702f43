using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>The motor's heat at one belt speed.</summary>
/// <param name="Speed">Belt speed.</param>
/// <param name="Heat">The heat; or why there is none, such as a speed the motor does not reach.</param>
public sealed record HeatAtSpeed(Speed Speed, Answer<MotorHeat> Heat)
{
    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(HeatAtSpeed), (nameof(Speed), Speed), (nameof(Heat), Heat));
}
