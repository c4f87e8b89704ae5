using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using HandsFree.Exchange.Fhir;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace HandsFree.Exchange.Tests.Fhir.Server;

/// <summary>A FHIR server on this machine's loopback, kept in memory, that keeps R4's rules, or breaks them as it is told to.</summary>
internal sealed class TestServer : IAsyncDisposable
{
    public const string Token = "the-right-token";
    private readonly WebApplication app;

    private TestServer(WebApplication app, X509Certificate2? certificate) => (this.app, Certificate) = (app, certificate);

    /// <summary>Its base.</summary>
    public Uri Address => new($"{app.Urls.First().Replace("127.0.0.1", "localhost", StringComparison.Ordinal)}/fhir/");

    /// <summary>What it has, by type and id.</summary>
    public Dictionary<string, Resource> Kept { get; } = [];

    /// <summary>Its own certificate; null without TLS.</summary>
    public X509Certificate2? Certificate { get; }

    /// <summary>What it does with the next transactions, one after the other; then it is good.</summary>
    public Queue<Behaviour> Next { get; } = [];

    /// <summary>How often something was posted.</summary>
    public int Posts { get; private set; }

    /// <summary>What happens before a transaction is done.</summary>
    public Action? Before { get; set; }

    public IEnumerable<T> All<T>() where T : Resource => Kept.Values.OfType<T>();

    public static async Task<TestServer> Start(bool tls = false)
    {
        X509Certificate2? certificate = tls ? SelfSigned() : null;
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrel(options => options.Listen(IPAddress.Loopback, 0, listen =>
        {
            if (certificate is not null)
            {
                listen.UseHttps(certificate);
            }
        }));
        builder.WebHost.UseKestrelHttpsConfiguration();
        TestServer server = new(builder.Build(), certificate);
        server.app.Run(server.Answer);
        await server.app.StartAsync();
        return server;
    }

    public async ValueTask DisposeAsync() => await app.DisposeAsync();

    private async System.Threading.Tasks.Task Answer(HttpContext context)
    {
        if (context.Request.Headers.Authorization != $"Bearer {Token}")
        {
            await Refuse(context, HttpStatusCode.Unauthorized, "the token is not known");
            return;
        }

        string path = context.Request.Path.Value!["/fhir/".Length..];
        if (context.Request.Method == "GET")
        {
            await Get(context, path);
            return;
        }

        Posts++;
        using MemoryStream body = new();
        await context.Request.Body.CopyToAsync(body);
        Bundle bundle = (Bundle)new FhirJsonDeserializer().DeserializeResource(Encoding.UTF8.GetString(body.ToArray()));
        if (bundle.Type == Bundle.BundleType.Batch)
        {
            await Write(context, new Bundle { Type = Bundle.BundleType.BatchResponse, Entry = [.. bundle.Entry.Select(Batched)] });
            return;
        }

        Before?.Invoke();
        await Transaction(context, bundle, Next.TryDequeue(out Behaviour behaviour) ? behaviour : Behaviour.Good);
    }

    private async System.Threading.Tasks.Task Transaction(HttpContext context, Bundle bundle, Behaviour behaviour)
    {
        switch (behaviour)
        {
            case Behaviour.Busy:
                context.Response.Headers.RetryAfter = "7";
                await Refuse(context, HttpStatusCode.ServiceUnavailable, "busy");
                return;
            case Behaviour.FullDisk:
                await Refuse(context, HttpStatusCode.InsufficientStorage, "no space left");
                return;
            case Behaviour.Refuses:
                await Refuse(context, HttpStatusCode.UnprocessableEntity, "Observation.code: 8867-4 is not wanted here\u001b[31m");
                return;
            case Behaviour.NoFhir:
                await context.Response.WriteAsync(Posts % 2 == 0 ? "[1]" : "<html>please log in</html>");
                return;
            case Behaviour.Redirects:
                context.Response.Redirect("http://127.0.0.1:1/elsewhere");
                return;
            default:
                break;
        }

        Dictionary<string, Resource> before = new(Kept);
        (Bundle? answer, HttpStatusCode status, string? why) = new R4Rules(Kept).Transaction(bundle);
        if (answer is null)
        {
            await Refuse(context, status, why!);
            return;
        }

        switch (behaviour)
        {
            case Behaviour.KeepsNothing:
                Kept.Clear();
                foreach ((string place, Resource resource) in before)
                {
                    Kept[place] = resource;
                }

                break;
            case Behaviour.KeepsAnother:
                ((Quantity)All<Observation>().First(o => o.Value is Quantity).Value!).Value += 1;
                break;
            case Behaviour.HangsUp:
                context.Abort();
                return;
            case Behaviour.HalfAnAnswer:
                byte[] whole = FhirText.Bytes(answer);
                await context.Response.Body.WriteAsync(whole.AsMemory(0, whole.Length / 2));
                return;
            default:
                break;
        }

        await Write(context, answer);
    }

    private Bundle.EntryComponent Batched(Bundle.EntryComponent asked) => Kept.TryGetValue(asked.Request!.Url!, out Resource? resource)
        ? new() { Resource = resource, Response = new() { Status = "200 OK" } }
        : new() { Response = new() { Status = "404 Not Found" } };

    private async System.Threading.Tasks.Task Get(HttpContext context, string path)
    {
        if (context.Request.QueryString.HasValue)
        {
            await Write(context, new Bundle
            {
                Type = Bundle.BundleType.Searchset,
                Entry = [.. R4Rules.Found(Kept, path, context.Request.QueryString.Value![1..]).Select(f => new Bundle.EntryComponent { FullUrl = $"{Address}{f.Place}", Resource = f.Resource })],
            });
        }
        else if (Kept.TryGetValue(path, out Resource? resource))
        {
            await Write(context, resource);
        }
        else
        {
            await Refuse(context, HttpStatusCode.NotFound, $"there is no {path}");
        }
    }

    private static System.Threading.Tasks.Task Refuse(HttpContext context, HttpStatusCode status, string why)
    {
        context.Response.StatusCode = (int)status;
        return Write(context, new OperationOutcome
        {
            Issue = [new() { Severity = OperationOutcome.IssueSeverity.Error, Code = OperationOutcome.IssueType.Processing, Details = new CodeableConcept { Text = why } }],
        });
    }

    private static System.Threading.Tasks.Task Write(HttpContext context, Resource resource)
    {
        context.Response.ContentType = "application/fhir+json";
        return context.Response.Body.WriteAsync(FhirText.Bytes(resource)).AsTask();
    }

    private static X509Certificate2 SelfSigned()
    {
        using RSA key = RSA.Create(2048);
        CertificateRequest request = new("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName("localhost");
        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        DateTimeOffset now = TimeProvider.System.GetUtcNow();
        using X509Certificate2 made = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(1));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), null);
    }
}
