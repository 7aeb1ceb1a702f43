using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation;

/// <summary>A lift test and the bolt position at which it was taken.</summary>
/// <param name="Lift">The reading.</param>
/// <param name="LeftTurns">Turns of the left bolt since the position at which the tension is asked for.</param>
/// <param name="RightTurns">Turns of the right bolt since then.</param>
public readonly record struct LiftAtTurns(LiftReading Lift, double LeftTurns, double RightTurns);
