using TreadmillMech.Service.Events;
using UnitsNet;
using static TreadmillMech.Json.Shapes.EventWords;

namespace TreadmillMech.Json.Shapes;

/// <summary>Currents. Where one was read decides what it tells: the motor's lead goes with torque, a mains lead with the load of the branch circuit.</summary>
internal static class CurrentShapes
{
    internal static readonly ObjectShape<MotorCurrentReading> Motor = new(
        "reading-currentOfMotor",
        static it =>
        {
            it.Constant("reading", Readings, "current");
            it.Constant("where", WordTables.MeterPlaces, MeterPlace.MotorLead);
            ShapeSlot<CurrentForm> form = it.Need("form", WordTables.Forms, static p => p.Form);
            ShapeSlot<MeterResponse> response = it.Need("response", WordTables.Responses, static p => p.Response);
            ShapeSlot<bool> zeroed = it.Need("zeroed", JsonKinds.Boolean, static p => p.Zeroed);
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            ShapeSlot<ElectricCurrent> current = it.Need("current", JsonKinds.Current, static p => p.Current);
            ShapeSlot<Speed> beltSpeed = it.Need("beltSpeed", JsonKinds.Speed, static p => p.BeltSpeed);
            it.May("voltage", JsonKinds.Voltage, static p => p.Voltage, static (p, v) => p with { Voltage = v });
            it.May(
                "motorSpeed",
                JsonKinds.RotationalSpeed,
                static p => p.MotorSpeed,
                static (p, v) => p with { MotorSpeed = v }
            );
            it.May("userMass", JsonKinds.Mass, static p => p.UserMass, static (p, v) => p with { UserMass = v });
            it.Between(static fields =>
                RefuseForm(
                    fields,
                    "motor lead",
                    "alternating",
                    "\"alternating\" on the motor's direct-current lead, where an alternating-current clamp sees only the ripple",
                    "\"direct\": read it again with a meter that reads direct current, zeroed before"
                )
            );
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    Form = values.Get(form),
                    Response = values.Get(response),
                    Zeroed = values.Get(zeroed),
                    State = values.Get(state),
                    Current = values.Get(current),
                    BeltSpeed = values.Get(beltSpeed),
                }
            );
        }
    );

    internal static readonly ObjectShape<MainsCurrentReading> Mains = new(
        "reading-currentOfMains",
        static it =>
        {
            it.Constant("reading", Readings, "current");
            it.Constant("where", WordTables.MeterPlaces, MeterPlace.MainsLead);
            ShapeSlot<CurrentForm> form = it.Need("form", WordTables.Forms, static p => p.Form);
            ShapeSlot<MeterResponse> response = it.Need("response", WordTables.Responses, static p => p.Response);
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            ShapeSlot<ElectricCurrent> current = it.Need("current", JsonKinds.Current, static p => p.Current);
            ShapeSlot<Speed> beltSpeed = it.Need("beltSpeed", JsonKinds.Speed, static p => p.BeltSpeed);
            // An alternating-current clamp has no offset to take out; the answer is taken and changes nothing.
            it.Optional(
                "zeroed",
                JsonKinds.Boolean,
                static (MainsCurrentReading _, out bool zeroed) => zeroed = false,
                static (p, _) => p
            );
            it.Between(static fields =>
                RefuseForm(
                    fields,
                    "mains lead",
                    "direct",
                    "\"direct\" on a mains lead, whose current alternates and leaves a direct-current meter near zero",
                    "\"alternating\": read it again with a true RMS clamp set to alternating current"
                )
            );
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    Form = values.Get(form),
                    Response = values.Get(response),
                    State = values.Get(state),
                    Current = values.Get(current),
                    BeltSpeed = values.Get(beltSpeed),
                }
            );
        }
    );
}
