using TreadmillMech.Samples.WebApi;

// dotnet run --project samples/WebApi, then open /openapi/v1.json.
await Api.Build(args).RunAsync();
