using Calx.App.Serving;

namespace Calx.App.Tests.Serving;

/// <summary>Passphrases as they are kept.</summary>
public sealed class PassphraseTests
{
    [Fact]
    public void A_passphrase_fits_its_own_hash_and_no_other_does()
    {
        string hash = Passphrase.Hash("four plain words here");
        Assert.True(Passphrase.Fits("four plain words here", hash));
        Assert.False(Passphrase.Fits("four plain words Here", hash));
        Assert.DoesNotContain("plain", hash, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_hashes_of_one_passphrase_differ_by_their_salt() =>
        Assert.NotEqual(Passphrase.Hash("four plain words here"), Passphrase.Hash("four plain words here"));

    /// <summary>From memory of the widely copied PBKDF2-HMAC-SHA-512 example: password, salt, 1 round, first 32 bytes.</summary>
    [Fact]
    public void A_hash_made_with_other_rounds_still_opens()
    {
        byte[] expected = Convert.FromHexString("867f70cf1ade02cff3752599a3a53dc4af34c7a669815ae5d513554e1c8cf252");
        string kept = $"pbkdf2-sha512$1${Convert.ToBase64String("salt"u8)}${Convert.ToBase64String(expected)}";
        Assert.True(Passphrase.Fits("password", kept));
    }

    [Theory]
    [InlineData("")]
    [InlineData("pbkdf2-sha512$x$y$z")]
    [InlineData("other$1$AA==$AA==")]
    public void A_broken_hash_opens_to_nobody(string kept) => Assert.False(Passphrase.Fits("password", kept));

    [Theory]
    [InlineData("short", "At least 10")]
    [InlineData("aaaaaaaaaaaa", "Too few different")]
    public void A_weak_passphrase_is_not_taken(string passphrase, string why) =>
        Assert.StartsWith(why, Passphrase.Fault(passphrase), StringComparison.Ordinal);
}
