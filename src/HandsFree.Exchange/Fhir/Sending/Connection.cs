using System.Net.Security;
using System.Security.Cryptography.X509Certificates;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>A connection to a server that the home named: TLS, except to this machine itself; no redirects, no cookies.</summary>
public static class Connection
{
    private const int MostAnswer = 64 * 1024 * 1024;

    /// <summary>The base of a server, or what is wrong with what was typed.</summary>
    public static (Uri? Server, string? Wrong) Address(string typed) => true switch
    {
        _ when !Uri.TryCreate(typed.TrimEnd('/') + "/", UriKind.Absolute, out Uri? uri) || uri.Scheme is not ("https" or "http") => (null, $"\"{typed}\" is no address of a server; write one such as https://server.example/fhir"),
        _ when new Uri(typed) is { UserInfo.Length: > 0 } => (null, "the address holds a name or a password; leave it out, and give a token with --token-file"),
        _ when new Uri(typed) is { Query.Length: > 0 } or { Fragment.Length: > 0 } => (null, $"\"{typed}\" is more than the base of a server; leave out what follows \"?\" or \"#\""),
        _ when new Uri(typed) is { Scheme: "http", IsLoopback: false } => (null, $"\"{typed}\" is not encrypted; the address must begin with https"),
        _ => (new Uri(typed.TrimEnd('/') + "/"), null),
    };

    /// <summary>Makes the connection.</summary>
    /// <param name="authority">The certificate of the authority that vouches for the server, where this machine does not know it; null for those that it knows.</param>
    public static HttpClient Open(X509Certificate2? authority)
    {
        SocketsHttpHandler handler = new() { AllowAutoRedirect = false, UseCookies = false, ConnectTimeout = TimeSpan.FromSeconds(20) };
        if (authority is not null)
        {
            X509ChainPolicy policy = new() { TrustMode = X509ChainTrustMode.CustomRootTrust, RevocationMode = X509RevocationMode.NoCheck };
            policy.CustomTrustStore.Add(authority);
            handler.SslOptions = new SslClientAuthenticationOptions { CertificateChainPolicy = policy };
        }

        return new HttpClient(handler) { MaxResponseContentBufferSize = MostAnswer, Timeout = Timeout.InfiniteTimeSpan };
    }
}
