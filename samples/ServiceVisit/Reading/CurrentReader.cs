using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>
/// A current. Where it was read decides what it tells: the motor's lead goes with torque, a mains lead with the load of
/// the branch circuit.
/// </summary>
internal static class CurrentReader
{
    internal static VisitEvent? Read(ObjectReader fields)
    {
        // Where the lead is not told, the fields of the fuller reading are the known ones.
        bool told = fields.Find("where") is not null;
        MeterPlace where = fields.Need("where", WordTables.MeterPlaces.Kind);
        return told && where == MeterPlace.MainsLead ? Mains(fields) : Motor(fields);
    }

    private static MotorCurrentReading? Motor(ObjectReader fields)
    {
        CurrentForm form = fields.Need("form", WordTables.Forms.Kind);
        MeterResponse response = fields.Need("response", WordTables.Responses.Kind);
        bool zeroed = fields.Need("zeroed", Kinds.Boolean);
        LoadState state = fields.Need("state", WordTables.States.Kind);
        ElectricCurrent current = fields.Need("current", Kinds.Current);
        Speed speed = fields.Need("beltSpeed", Kinds.Speed);
        if (fields.Says("where", "motor lead") && fields.Says("form", "alternating"))
        {
            fields.Refuse(
                "form",
                "\"alternating\" on the motor's direct-current lead, where an alternating-current clamp sees only the ripple",
                "\"direct\": read it again with a meter that reads direct current, zeroed before"
            );
        }

        MotorCurrentReading? reading = fields.Make(() =>
            new MotorCurrentReading
            {
                State = state,
                Current = current,
                BeltSpeed = speed,
                Form = form,
                Response = response,
                Zeroed = zeroed,
            }
        );
        reading = fields.Set(reading, "voltage", Kinds.Voltage, static (it, v) => it with { Voltage = v });
        reading = fields.Set(
            reading,
            "motorSpeed",
            Kinds.RotationalSpeed,
            static (it, v) => it with { MotorSpeed = v }
        );
        return fields.Set(reading, "userMass", Kinds.Mass, static (it, v) => it with { UserMass = v });
    }

    private static MainsCurrentReading? Mains(ObjectReader fields)
    {
        CurrentForm form = fields.Need("form", WordTables.Forms.Kind);
        MeterResponse response = fields.Need("response", WordTables.Responses.Kind);
        LoadState state = fields.Need("state", WordTables.States.Kind);
        ElectricCurrent current = fields.Need("current", Kinds.Current);
        Speed speed = fields.Need("beltSpeed", Kinds.Speed);
        if (fields.Says("form", "direct"))
        {
            fields.Refuse(
                "form",
                "\"direct\" on a mains lead, whose current alternates and leaves a direct-current meter near zero",
                "\"alternating\": read it again with a true RMS clamp set to alternating current"
            );
        }

        MainsCurrentReading? reading = fields.Make(() =>
            new MainsCurrentReading
            {
                State = state,
                Current = current,
                BeltSpeed = speed,
                Form = form,
                Response = response,
            }
        );

        // An alternating-current clamp has no offset to take out; the answer is taken and changes nothing.
        return fields.Set(reading, "zeroed", Kinds.Boolean, static (it, _) => it);
    }
}
