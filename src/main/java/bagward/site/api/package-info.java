/** What the JSON interface answers, one record a thing. */
package bagward.site.api;
