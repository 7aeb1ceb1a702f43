using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Further readings of motor, frame and mains, and what was seen, heard or smelt; one reader each.</summary>
internal static class MachineReadingReaders
{
    internal static VisitEvent? Temperature(ObjectReader fields)
    {
        WarmPlace place = fields.Need("place", WordTables.WarmPlaces.Kind);
        Temperature there = fields.Need("temperature", Kinds.Celsius);
        Temperature air = fields.Need("air", Kinds.Celsius);
        return fields.Make(() =>
            new TemperatureReading
            {
                Place = place,
                Temperature = there,
                Air = air,
            }
        );
    }

    internal static VisitEvent? CoastDown(ObjectReader fields)
    {
        Speed from = fields.Need("from", Kinds.Speed);
        Duration time = fields.Need("time", Kinds.Duration);
        return fields.Make(() => new CoastDownReading { From = from, Time = time });
    }

    internal static VisitEvent? Brush(ObjectReader fields)
    {
        Length left = fields.Need("left", Kinds.Length);
        BrushReading? reading = fields.Make(() => new BrushReading { Left = left });
        return fields.Set(reading, "least", Kinds.Length, static (it, v) => it with { Least = v });
    }

    internal static VisitEvent? MainsVoltage(ObjectReader fields)
    {
        LoadState state = fields.Need("state", WordTables.States.Kind);
        ElectricPotential voltage = fields.Need("voltage", Kinds.Voltage);
        return fields.Make(() => new MainsVoltageReading { State = state, Voltage = voltage });
    }

    internal static VisitEvent? Incline(ObjectReader fields)
    {
        Ratio measured = fields.Need("measured", Kinds.Share);
        Ratio display = fields.Need("display", Kinds.Share);
        return fields.Make(() => new InclineReading { Measured = measured, Display = display });
    }

    internal static VisitEvent? Level(ObjectReader fields)
    {
        Ratio across = fields.Need("across", Kinds.Share);
        return fields.Make(() => new LevelReading { Across = across });
    }

    internal static VisitEvent? Symptom(ObjectReader fields)
    {
        Symptom symptom = fields.Need("symptom", WordTables.Symptoms.Kind);
        bool present = fields.Need("present", Kinds.Boolean);
        return fields.Make(() => new SymptomReading { Symptom = symptom, Present = present });
    }
}
