namespace TreadmillMech.Tests.Docs.Bibliography;

/// <summary>Kinds of works, in the order of the page.</summary>
public enum WorkKind
{
    /// <summary>Standards, codes and guides.</summary>
    Standard,

    /// <summary>Textbooks and handbooks.</summary>
    Book,

    /// <summary>Papers and theses.</summary>
    Paper,

    /// <summary>Measurements that anybody can download.</summary>
    OpenData,
}
