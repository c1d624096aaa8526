// SPDX-License-Identifier: MIT
#include <gtk/gtk.h>
#include <wx/button.h>
#include <wx/stattext.h>

#include <utility>

#include "gui/window/platform.h"

namespace tangmark::window {
namespace {

GtkWidget* widget_of(const wxWindow& window) {
  return GTK_WIDGET(window.GetHandle());
}

// wx may put the label in a box of its own to give it a window.
GtkLabel* label_of(const wxStaticText& text) {
  GtkWidget* widget = widget_of(text);
  if (GTK_IS_LABEL(widget)) return GTK_LABEL(widget);
  return GTK_LABEL(gtk_bin_get_child(GTK_BIN(widget)));
}

GtkLabel* label_in(GtkWidget* widget) {
  if (GTK_IS_LABEL(widget)) return GTK_LABEL(widget);
  if (!GTK_IS_BIN(widget)) return nullptr;
  GtkWidget* child = gtk_bin_get_child(GTK_BIN(widget));
  return child == nullptr ? nullptr : label_in(child);
}

// The text as the label would draw it in that width; -1 for one line. Not asked of the widget: it
// never wants less than the size that it was last given, so a text that once stood in a narrow
// place would stay tall for good.
std::pair<int, int> drawn_size(const wxStaticText& text, int width) {
  PangoLayout* layout = pango_layout_copy(gtk_label_get_layout(label_of(text)));
  pango_layout_set_width(layout, width < 0 ? -1 : width * PANGO_SCALE);
  pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
  int wide = 0, tall = 0;
  pango_layout_get_pixel_size(layout, &wide, &tall);
  g_object_unref(layout);
  return {wide, tall};
}

void ask_again(GtkWidget* widget, void*) {
  gtk_widget_queue_resize(widget);
  if (GTK_IS_CONTAINER(widget)) gtk_container_forall(GTK_CONTAINER(widget), ask_again, nullptr);
}

bool settling = false;

// A place given while its parent was being laid out is not taken in by the toolkit, and a widget
// without a place is not drawn. So once all is laid out every widget is given its place again.
void settle_soon() {
  if (settling) return;
  settling = true;
  const auto settle = [](void*) -> gboolean {
    settling = false;
    GList* windows = gtk_window_list_toplevels();
    for (GList* at = windows; at != nullptr; at = at->next)
      ask_again(GTK_WIDGET(at->data), nullptr);
    g_list_free(windows);
    return G_SOURCE_REMOVE;
  };
  g_idle_add(settle, nullptr);
}

std::string span(int em_px, const std::string& text) {
  const int thousandths_of_a_point = em_px * 1024 * 72 / 96;
  char* escaped = g_markup_escape_text(text.c_str(), -1);
  std::string made =
      "<span size='" + std::to_string(thousandths_of_a_point) + "'>" + escaped + "</span>";
  g_free(escaped);
  return made;
}

}  // namespace

void label_button(wxButton& button, const std::string& label, const std::string& key, int em_px) {
  button.SetLabel(wxString::FromUTF8(label));
  std::string markup = span(em_px, label);
  if (!key.empty()) markup += "  " + span(em_px * 13 / 15, key);
  if (GtkLabel* shown = label_in(widget_of(button))) gtk_label_set_markup(shown, markup.c_str());
}

int label_width(const wxButton& button) {
  int least = 0, natural = 0;
  if (GtkLabel* shown = label_in(widget_of(button))) {
    gtk_widget_get_preferred_width(GTK_WIDGET(shown), &least, &natural);
  }
  return natural;
}

void name_for_readers(const wxWindow& window, const std::string& name) {
  if (AtkObject* reader = gtk_widget_get_accessible(widget_of(window))) {
    atk_object_set_name(reader, name.c_str());
  }
}

void set_style(const wxWindow& window, const char* style, bool on) {
  GtkStyleContext* context = gtk_widget_get_style_context(widget_of(window));
  if (on) {
    gtk_style_context_add_class(context, style);
  } else {
    gtk_style_context_remove_class(context, style);
  }
}

void use_style_sheet(const std::string& css) {
  static GtkCssProvider* current = nullptr;  // owned by the toolkit's screen
  GdkScreen* screen = gdk_screen_get_default();
  if (current != nullptr) {
    gtk_style_context_remove_provider_for_screen(screen, GTK_STYLE_PROVIDER(current));
    g_object_unref(current);
  }
  current = gtk_css_provider_new();
  gtk_css_provider_load_from_data(current, css.c_str(), -1, nullptr);
  gtk_style_context_add_provider_for_screen(screen, GTK_STYLE_PROVIDER(current),
                                            GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
}

void set_text_size(const wxStaticText& text, int em_px, bool strong) {
  PangoAttrList* attributes = pango_attr_list_new();
  pango_attr_list_insert(attributes, pango_attr_size_new_absolute(em_px * PANGO_SCALE));
  pango_attr_list_insert(
      attributes, pango_attr_weight_new(strong ? PANGO_WEIGHT_SEMIBOLD : PANGO_WEIGHT_NORMAL));
  gtk_label_set_attributes(label_of(text), attributes);
  pango_attr_list_unref(attributes);
}

void wrap_by_width(const wxStaticText& text) {
  GtkLabel* label = label_of(text);
  gtk_label_set_line_wrap(label, TRUE);
  gtk_label_set_line_wrap_mode(label, PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign(label, 0);
}

int height_at_width(const wxStaticText& text, int width) {
  settle_soon();
  return drawn_size(text, width).second;
}

int width_on_one_line(const wxStaticText& text) {
  return drawn_size(text, -1).first;
}

void align_text_right(const wxStaticText& text) {
  gtk_label_set_xalign(label_of(text), 1);
}

}  // namespace tangmark::window
