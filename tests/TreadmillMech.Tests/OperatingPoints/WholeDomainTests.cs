using System.Reflection;
using FsCheck;
using FsCheck.Xunit;
using TreadmillMech.Parts;
using TreadmillMech.Tests.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>Whatever the parts accept, the operating point answers with finite numbers or with a reason.</summary>
public sealed class WholeDomainTests
{
    private static readonly PropertyInfo[] Properties = typeof(OperatingPoint).GetProperties();

    [Property(MaxTest = 3000)]
    public void EveryFoundAnswerIsAFiniteNumber(DoNotSize<int> seed)
    {
        (Treadmill machine, Demand demand) = Draw(new Random(seed.Item));
        OperatingPoint point = machine.At(demand);
        foreach (PropertyInfo property in Properties)
        {
            object value = property.GetValue(point)!;
            bool isAnswer =
                property.PropertyType.IsGenericType
                && property.PropertyType.GetGenericTypeDefinition() == typeof(Answer<>);
            if (isAnswer)
            {
                bool found = (bool)property.PropertyType.GetProperty("Found")!.GetValue(value)!;
                value = property.PropertyType.GetProperty(found ? "Value" : "Missing")!.GetValue(value)!;
            }

            double number = value switch
            {
                Shortfall missing => missing.Needed + missing.Available,
                double plain => plain,
                IQuantity quantity => quantity.As(quantity.Unit),
                _ => 0,
            };
            Assert.True(double.IsFinite(number), $"{property.Name} is {value} for {machine}, {demand}");
        }

        Assert.NotEmpty(point.ToString());
        Assert.Equal(point, machine.At(demand));
        Assert.Equal(point.GetHashCode(), machine.At(demand).GetHashCode());
    }

    private static (Treadmill Machine, Demand Demand) Draw(Random random)
    {
        Treadmill machine = Drawn<Treadmill>(random);
        TakeUp takeUp = Drawn<TakeUp>(random);
        Set(takeUp, "Thread", ScrewThread.Parse(random.Next(2) == 0 ? "M8" : "3/8-16 UNC"));
        Set(machine, "TakeUp", takeUp);
        Set(machine, "Belt", Drawn<RunningBelt>(random));
        Set(machine, "DriveRoller", Drawn<Roller>(random));
        Set(machine, "TailRoller", Drawn<Roller>(random));
        Set(machine, "Deck", Drawn<Deck>(random));
        Set(machine, "DriveEnd", (DriveEnd)random.Next(2));
        if (random.Next(4) != 0)
        {
            DriveBelt belt = Drawn<DriveBelt>(random);
            Set(belt, "Tensioning", (Tensioning)random.Next(1, 7));
            Set(machine, "DriveBelt", belt);
        }

        Set(machine, "Motor", random.Next(4) == 0 ? null : Drawn<DcMotor>(random));
        Set(machine, "Supply", random.Next(4) == 0 ? null : Drawn<Supply>(random));
        Demand demand = Drawn<Demand>(random);
        Set(demand, "Person", Drawn<Person>(random));
        Set(demand, "Gait", (Gait)random.Next(3));
        Set(demand, "Rails", random.Next(2) == 0 ? null : Drawn<Rails>(random));
        return (machine, demand);
    }

    /// <summary>A part with each value somewhere in its range, at an end of it, or unknown where it may be.</summary>
    private static TPart Drawn<TPart>(Random random)
        where TPart : class
    {
        TPart part = Activator.CreateInstance<TPart>();
        foreach (PartRange range in PartRanges.All.Where(range => range.Part == typeof(TPart)))
        {
            bool mayBeUnknown = Nullable.GetUnderlyingType(range.Member.PropertyType) is not null;
            double share = random.Next(4) switch
            {
                0 => 0,
                1 => 1,
                _ => random.NextDouble(),
            };
            object? value =
                mayBeUnknown && random.Next(5) == 0 ? null : range.Make(range.From + (share * (range.To - range.From)));
            Set(part, range.Property, value);
        }

        return part;
    }

    private static void Set(object part, string name, object? value) =>
        part.GetType().GetProperty(name)!.SetValue(part, value);
}
