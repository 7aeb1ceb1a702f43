namespace TreadmillMech.Service.Events;

/// <summary>What was on the cloth.</summary>
public enum WipedTrace
{
    /// <summary>Nothing: dry and clean.</summary>
    Dry = 0,

    /// <summary>Dust or fluff.</summary>
    Dust,

    /// <summary>A thin even film of lubricant.</summary>
    Film,

    /// <summary>Oil or lubricant that smears.</summary>
    Oil,
}
