// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the object library from being empty; the data is in the generated files.
namespace resources {
extern const int linked;
const int linked = 1;
}  // namespace resources
