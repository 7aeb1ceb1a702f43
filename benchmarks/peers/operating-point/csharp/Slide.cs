using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>How far a belt slides in one step, in quantities.</summary>
internal static class Slide
{
    private const int Phases = 64;

    internal static Length Of(
        Loads loads,
        Speed beltSpeed,
        Duration stepTime,
        double onPull,
        double onShared,
        Force grip,
        double ratio,
        Mass mass
    )
    {
        Duration time = stepTime / Phases;
        Speed speed = Speed.Zero;
        Length slide = Length.Zero;
        for (int pass = 0; pass < 2; pass++)
        {
            slide = Length.Zero;
            for (int i = 0; i < Phases; i++)
            {
                (Force pull, Force shared) = loads.At((i + 0.5) / Phases * loads.StepPhase);
                Force beyond = (pull * onPull) + (shared * onShared) - grip;
                Acceleration slowing = beyond * (2 / (ratio + 1)) / mass;
                speed += slowing * time;
                speed =
                    speed < Speed.Zero ? Speed.Zero
                    : speed > beltSpeed ? beltSpeed
                    : speed;
                slide += speed * time;
            }

            if (speed <= Speed.Zero)
            {
                break;
            }
        }

        return slide;
    }
}
