// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Placeholder until the layer has its first file.
namespace placeholder {
extern const int store;
const int store = 0;
}  // namespace placeholder
