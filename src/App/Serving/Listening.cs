using System.Net;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;

namespace Calx.App.Serving;

/// <summary>What the program listens on: this machine alone, or the room's network too.</summary>
public static class Listening
{
    /// <summary>Sets up the server.</summary>
    public static void Configure(IWebHostBuilder web, ServeOptions options, long largestBody)
    {
        X509Certificate2? certificate = options.Certificate is null ? null : Load(options);
        if (certificate is not null)
        {
            web.UseKestrelHttpsConfiguration();
        }

        web.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = largestBody;
            server.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            // Two streams each for a class and its teacher's screens, and room for a school's other lessons.
            server.Limits.MaxConcurrentConnections = 5000;
            server.Listen(options.OpenToRoom ? IPAddress.Any : IPAddress.Loopback, options.Port, listen =>
            {
                listen.Protocols = HttpProtocols.Http1AndHttp2;
                if (certificate is not null)
                {
                    listen.UseHttps(new HttpsConnectionAdapterOptions { ServerCertificate = certificate });
                }
                else
                {
                    listen.Protocols = HttpProtocols.Http1;
                }
            });
        });
    }

    /// <summary>Reads a certificate.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="System.Security.Cryptography.CryptographicException">It holds no certificate with its key.</exception>
    private static X509Certificate2 Load(ServeOptions options)
    {
        if (options.CertificateKey is not string key)
        {
            return X509CertificateLoader.LoadPkcs12FromFile(options.Certificate!, password: null);
        }

        // Windows does not serve with a key that only this process knows, as one from a PEM file is: by way of a PFX it does.
        using var read = X509Certificate2.CreateFromPemFile(options.Certificate!, key);
        return X509CertificateLoader.LoadPkcs12(read.Export(X509ContentType.Pfx), password: null);
    }
}
