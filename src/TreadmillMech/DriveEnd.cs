namespace TreadmillMech;

/// <summary>At which end the driven roller sits. Front is where the user looks.</summary>
public enum DriveEnd
{
    /// <summary>The front roller is driven, the tail roller is behind the user.</summary>
    Front = 0,

    /// <summary>The rear roller is driven; the undriven roller is in front of the user.</summary>
    Rear,
}
