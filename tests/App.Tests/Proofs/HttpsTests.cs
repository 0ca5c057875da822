using System.Net;
using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>The program behind a certificate that the school gives it.</summary>
public sealed class HttpsTests
{
    [Theory]
    [InlineData("pem")]
    [InlineData("pfx")]
    public async Task Pages_come_over_HTTPS_with_the_certificate_that_was_given_and_cookies_are_for_it_alone(string form)
    {
        using var folder = new ScratchFolder();
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=larkmoor.example", key, HashAlgorithmName.SHA256);
        using X509Certificate2 made = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(30));
        string certificate = folder.PathOf($"school.{form}"), secret = folder.PathOf("school.key"), passphrase = folder.PathOf("passphrase");
        await File.WriteAllTextAsync(passphrase, "four plain words here", TestContext.Current.CancellationToken);
        List<string> words = ["--lan", "--passphrase-file", passphrase, "--certificate", certificate];
        if (form == "pem")
        {
            await File.WriteAllTextAsync(certificate, made.ExportCertificatePem(), TestContext.Current.CancellationToken);
            await File.WriteAllTextAsync(secret, key.ExportPkcs8PrivateKeyPem(), TestContext.Current.CancellationToken);
            words.AddRange(["--certificate-key", secret]);
        }
        else
        {
            await File.WriteAllBytesAsync(certificate, made.Export(X509ContentType.Pfx), TestContext.Current.CancellationToken);
        }

        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.PathOf("records")) { Words = words });
        Assert.Equal(Uri.UriSchemeHttps, program.Address.Scheme);
        X509Certificate? shown = null;
        using var handler = new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            UseProxy = false,
            SslOptions = new SslClientAuthenticationOptions { RemoteCertificateValidationCallback = (_, seen, _, _) => (shown = seen) is not null },
        };
        using var client = new HttpClient(handler) { BaseAddress = program.Address };
        client.DefaultRequestHeaders.Add("Origin", program.Address.GetLeftPart(UriPartial.Authority));
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri("/sign-in", UriKind.Relative), new FormUrlEncodedContent([new("passphrase", "four plain words here")]), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal(made.GetSerialNumberString(), shown!.GetSerialNumberString());
        Assert.All(answer.Headers.GetValues("Set-Cookie"), cookie => Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase));
    }
}
