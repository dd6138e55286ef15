/** What people enter: fields of forms, their faults, and the register changes they make. */
package bagward.site.form;
