namespace TreadmillMech.Figures;

/// <summary>Where the repository keeps its figures.</summary>
internal static class Place
{
    internal static string OfImages()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TreadmillMech.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(
            folder?.FullName ?? throw new InvalidOperationException("The figures are drawn outside of the repository."),
            "docs",
            "images",
            "figures"
        );
    }
}
