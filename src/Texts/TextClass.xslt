<?xml version="1.0" encoding="utf-8"?>
<!-- Writes the class of a topic's texts. A comment says where a text stands and names each place in it: '{0} groups, {1} room'. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform">
  <xsl:output method="text" encoding="utf-8" />
  <xsl:param name="topic" />
  <xsl:param name="namespace" />
  <xsl:param name="language" />

  <xsl:template match="/root">
    <xsl:text>// &lt;auto-generated/&gt;
#nullable enable
namespace </xsl:text>
    <xsl:value-of select="$namespace" />
    <xsl:text>;

internal sealed class </xsl:text>
    <xsl:value-of select="concat($topic, '(', $language)" />
    <xsl:text> language)
{
</xsl:text>
    <xsl:apply-templates select="data" />
    <xsl:text>}
</xsl:text>
  </xsl:template>

  <xsl:template match="data">
    <xsl:text>    /// &lt;summary&gt;</xsl:text>
    <xsl:value-of select="translate(normalize-space(value), '&lt;&gt;&amp;', '()+')" />
    <xsl:text>&lt;/summary&gt;
    public string </xsl:text>
    <xsl:value-of select="@name" />
    <xsl:if test="contains(value, '{0}')">
      <xsl:text>(</xsl:text>
      <xsl:call-template name="places"><xsl:with-param name="before" select="'string @'" /></xsl:call-template>
      <xsl:text>)</xsl:text>
    </xsl:if>
    <xsl:text> => language.Text("</xsl:text>
    <xsl:value-of select="concat($topic, '&quot;, &quot;', @name, '&quot;')" />
    <xsl:if test="contains(value, '{0}')">
      <xsl:text>, </xsl:text>
      <xsl:call-template name="places"><xsl:with-param name="before" select="'@'" /></xsl:call-template>
    </xsl:if>
    <xsl:text>);

</xsl:text>
  </xsl:template>

  <!-- The word behind '{0}' in the comment, then the one behind '{1}', as long as the text has such a place. -->
  <xsl:template name="places">
    <xsl:param name="before" />
    <xsl:param name="number" select="0" />
    <xsl:variable name="behind" select="translate(substring-after(comment, concat('{', $number, '} ')), ',.;:', '    ')" />
    <xsl:if test="$number &gt; 0">, </xsl:if>
    <xsl:value-of select="concat($before, substring-before(concat($behind, ' '), ' '))" />
    <xsl:if test="contains(value, concat('{', $number + 1, '}'))">
      <xsl:call-template name="places">
        <xsl:with-param name="before" select="$before" />
        <xsl:with-param name="number" select="$number + 1" />
      </xsl:call-template>
    </xsl:if>
  </xsl:template>
</xsl:stylesheet>
