using System.Reflection;
using TreadmillMech.Parts;
using TreadmillMech.Tests.Parts;

namespace TreadmillMech.Tests.Json;

/// <summary>Parts with every property anywhere in its range, and some that may be unknown left out.</summary>
internal static class RandomParts
{
    private static readonly string[] Threads = ["M8x1.25", "M10x1.5", "M6x1", "3/8-16 UNC", "5/16-24 UNF"];

    internal static object Any(Type type, Random random, bool complete = false)
    {
        if (type == typeof(ScrewThread))
        {
            return random.Next(3) == 0
                ? ScrewThread.FromMeasuredLead(UnitsNet.Length.FromMeters(0.0002 + (0.0058 * random.NextDouble())))
                : ScrewThread.Parse(Threads[random.Next(Threads.Length)]);
        }

        object part = Activator.CreateInstance(type)!;
        foreach (PropertyInfo property in Properties(type))
        {
            bool mayMiss = new NullabilityInfoContext().Create(property).WriteState == NullabilityState.Nullable;
            if (complete || !mayMiss || random.Next(4) > 0)
            {
                property.SetValue(part, Value(type, property, random, complete));
            }
        }

        return part;
    }

    /// <summary>What a part is made of: all that can be set.</summary>
    internal static IEnumerable<PropertyInfo> Properties(Type type) =>
        type.GetProperties().Where(static property => property.SetMethod is { IsPublic: true });

    private static object Value(Type part, PropertyInfo property, Random random, bool complete)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        if (type == typeof(bool))
        {
            return random.Next(2) == 0;
        }

        if (type.IsEnum)
        {
            object[] kinds =
            [
                .. Enum.GetValues(type).Cast<object>().Where(static kind => kind is not Tensioning.DirectDrive),
            ];
            return kinds[random.Next(kinds.Length)];
        }

        if (type.IsClass)
        {
            return Any(type, random, complete);
        }

        PartRange range = PartRanges.All.Single(row => row.Part == part && row.Property == property.Name);

        // The ends belong to the range; between them every last bit is drawn.
        double share = random.Next(20) switch
        {
            0 => 0,
            1 => 1,
            _ => random.NextDouble(),
        };
        return range.Make(Math.Clamp(range.From + (share * (range.To - range.From)), range.From, range.To));
    }
}
