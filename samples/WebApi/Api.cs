namespace TreadmillMech.Samples.WebApi;

/// <summary>A small service that answers two questions: what a machine does under a demand, and what a visit comes to.</summary>
internal static class Api
{
    /// <summary>More than any machine or visit needs, and less than would hurt.</summary>
    internal const int MostBytes = 1 << 20;

    internal static WebApplication Build(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(args);
        builder.WebHost.ConfigureKestrel(static server => server.Limits.MaxRequestBodySize = MostBytes);
        builder.Services.ConfigureHttpJsonOptions(static options =>
            options.SerializerOptions.TypeInfoResolverChain.Insert(0, ApiJson.Default)
        );
        builder.Services.AddProblemDetails();
        builder.Services.AddOpenApi();
        WebApplication app = builder.Build();
        app.UseExceptionHandler();
        app.UseStatusCodePages();
        app.MapOpenApi();
        Endpoints.Map(app);
        return app;
    }
}
