using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>Talks to a FHIR server. What may pass later is tried again after growing pauses; nothing here is sent that could not be sent twice.</summary>
/// <param name="http">Whose handler says whom to trust; no redirects.</param>
/// <param name="server">The server's base, ending in a slash.</param>
/// <param name="token">A bearer token, or null.</param>
/// <param name="time">Waits and limits go by it.</param>
/// <param name="pauses">How often, and how long between.</param>
/// <param name="say">Gets a line when something is tried again.</param>
public sealed class FhirClient(HttpClient http, Uri server, string? token, TimeProvider time, Pauses pauses, Action<string> say)
{
    private const string Json = "application/fhir+json";
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);
    private static readonly FhirJsonDeserializer Reader = new(new DeserializerSettings().UsingMode(DeserializationMode.Recoverable));

    /// <summary>Posts a bundle to the server's base.</summary>
    public Task<(ServerAnswer? Answer, string? Error)> Post(Bundle bundle) => Tried(() => Request(HttpMethod.Post, "", FhirText.Bytes(bundle)));

    /// <summary>Gets a resource or a search.</summary>
    /// <param name="path">Below the server's base.</param>
    public Task<(ServerAnswer? Answer, string? Error)> Get(string path) => Tried(() => Request(HttpMethod.Get, path, null));

    private HttpRequestMessage Request(HttpMethod method, string path, byte[]? content)
    {
        HttpRequestMessage request = new(method, new Uri(server, path));
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(Json));
        request.Headers.Authorization = token is null ? null : new AuthenticationHeaderValue("Bearer", token);
        if (content is not null)
        {
            request.Content = new ByteArrayContent(content);
            request.Content.Headers.ContentType = new MediaTypeHeaderValue(Json) { CharSet = "utf-8" };
        }

        return request;
    }

    private async Task<(ServerAnswer? Answer, string? Error)> Tried(Func<HttpRequestMessage> request)
    {
        for (int tried = 1; ; tried++)
        {
            (ServerAnswer? answer, string? cut) = await Once(request).ConfigureAwait(false);
            if (answer is { MayPass: false })
            {
                return (answer, null);
            }

            string why = answer?.Words ?? cut!;
            if (tried >= pauses.Tries)
            {
                return (null, $"{server} could not be reached or does not answer as it should, {tried} times ({why})");
            }

            TimeSpan pause = pauses.After(tried, answer?.RetryAfter);
            say($"{server}: {why}; tried again in {pause.TotalSeconds:0} s");
            await System.Threading.Tasks.Task.Delay(pause, time).ConfigureAwait(false);
        }
    }

    private async Task<(ServerAnswer? Answer, string? Cut)> Once(Func<HttpRequestMessage> make)
    {
        using CancellationTokenSource limit = new(Patience, time);
        try
        {
            using HttpRequestMessage request = make();
            using HttpResponseMessage response = await http.SendAsync(request, HttpCompletionOption.ResponseContentRead, limit.Token).ConfigureAwait(false);
            byte[] content = await response.Content.ReadAsByteArrayAsync(limit.Token).ConfigureAwait(false);
            (Resource? body, string? wrong) = Parsed(content);
            return response.IsSuccessStatusCode && body is null
                ? (null, wrong ?? "an empty answer")
                : (new ServerAnswer(response.StatusCode, body, response.Headers.RetryAfter is { } after ? after.Delta ?? after.Date - time.GetUtcNow() : null), null);
        }
        catch (HttpRequestException e)
        {
            return (null, (e.InnerException?.Message ?? e.Message).ReplaceLineEndings(" "));
        }
        catch (OperationCanceledException)
        {
            return (null, $"no answer within {Patience.TotalSeconds:0} s");
        }
    }

    private static (Resource? Body, string? Wrong) Parsed(byte[] content)
    {
        if (content.Length == 0)
        {
            return (null, null);
        }

        try
        {
            return (Reader.DeserializeResource(Encoding.UTF8.GetString(content)), null);
        }
        catch (Exception wrong) when (wrong is DeserializationFailedException or JsonException or InvalidOperationException)
        {
            return (null, "half an answer, or one that is no FHIR");
        }
    }
}
